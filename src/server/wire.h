#pragma once
// An answer's status line and headers as they go over the wire.

#include "server/message.h"

namespace toft::server {

struct WireMode {
    bool keep_alive = true;
    bool head_only = false;  ///< asked with HEAD
};

/// Ends with the empty line. Control characters in values become blanks.
std::string head_of(const Response& response, std::size_t body_size, const WireMode& mode);

}  // namespace toft::server
