#pragma once
// Who may reach the server: nothing that another site's page sends, and no name that another site
// could point here. Decided from the headers alone.

#include "http/message.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace toft::server {

/// What of this machine is served, and to whom.
struct Door {
    std::uint16_t port = 0;
    bool lan = false;                      ///< other devices may knock, and must pair
    std::vector<std::string> addresses{};  ///< numeric, of this machine; with `lan` only
};

/// Whether a Host header names this machine at that port. Names that could be another's are not
/// believed: only localhost and numeric addresses are.
bool host_is_ours(const std::string& host, const Door& door);

/// A refusal, or nothing. Asked of every request before all else.
std::optional<Response> refusal(const Request& request, const Door& door);

/// Whether a media type (with or without parameters) is that one.
bool is_type(const std::string& sent, std::string_view type);

}  // namespace toft::server
