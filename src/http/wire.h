#pragma once
// An answer's status line and headers as they go over the wire.

#include "base/outcome.h"
#include "http/message.h"

#include <cstdint>

namespace toft::server {

struct WireMode {
    bool keep_alive = true;
    bool head_only = false;  ///< asked with HEAD
};

/// Ends with the empty line. Control characters in values become blanks.
std::string head_of(const Response& response, std::size_t body_size, const WireMode& mode);

/// Of a request line.
Method method_of(const std::string& name);

/// What is read of the headers, each asked for by name; `hosts` is left at 0.
Headers headers_of(const std::function<std::string(const char*)>& value);

/// An address that nothing can listen on.
struct Unheard {
    std::string address;
    std::uint16_t port = 0;
    bool taken = false;  ///< by another program
    std::string why;
};

/// Fault `port`, with the remedy.
Faults listening_fault(const Unheard& unheard);

}  // namespace toft::server
