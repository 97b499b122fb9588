#pragma once
// Whether a document fits a JSON Schema, of as much of the language as the routes' shapes use.

#include "http/json.h"

#include <string>
#include <vector>

namespace toft::server {

/// What does not fit, each with its place. `components` holds what "#/components/schemas/…" names;
/// documents with a schema of their own ("urn:…") must be objects.
std::vector<std::string> misfits(const Json& document, const Json& schema, const Json& components,
                                 const std::string& place = "");

}  // namespace toft::server
