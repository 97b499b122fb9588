#pragma once
// The JSON that goes in and out, as JSON Schema.

#include "http/json.h"

namespace toft::server {

/// {"JobState": {…}, …}: OpenAPI's components. Documents that have a schema of their own are
/// referred to by its $id.
Json shapes();

}  // namespace toft::server
