#pragma once
// The addresses of this machine.

#include <string>
#include <vector>

namespace toft::server {

/// Numeric addresses by which other devices of the network reach this machine, version 4 first;
/// none of the loopback, none that is good on one link only.
std::vector<std::string> own_addresses();

}  // namespace toft::server
