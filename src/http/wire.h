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

/// What of a request's headers says where it ends.
struct Framing {
    unsigned version = 11;          ///< of HTTP: 11 for 1.1
    std::size_t codings = 0;        ///< how many Transfer-Encoding headers were sent
    std::string transfer_encoding;  ///< the first of them
};

/// Whether it is known where the request ends: the only transfer coding is `chunked`, said once and
/// alone (RFC 9112, 6.1 and 6.3). Whoever reads on after another takes a body for a request.
bool ends_clearly(const Framing& framing);

/// Whether a header goes on in a second line (RFC 9112, 5.2). Looks no further than the empty line.
bool has_folded_line(std::string_view head);

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
