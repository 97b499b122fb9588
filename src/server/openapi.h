#pragma once
// The routes as OpenAPI 3.1, for other programs.

#include <string>

namespace toft::server {

/// Indented, ending with a line feed; schema/api.json.
std::string openapi_text();

}  // namespace toft::server
