#pragma once
// Trees of JSON in and out, read with the bounds of the job reader.

#include "codec/document.h"
#include "http/message.h"

#include <string>

namespace toft::server {

using codec::Json;

/// On one line; text that is no UTF-8 is shown with replacement characters.
inline std::string text_of(const Json& tree) {
    return tree.dump(-1, ' ', false, Json::error_handler_t::replace);
}

inline Response json(const Json& tree, unsigned status = 200) {
    Response response;
    response.status = status;
    response.type = "application/json";
    response.body = text_of(tree);
    return response;
}

}  // namespace toft::server
