#include "door/addresses.h"

#include <arpa/inet.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>
#include <sys/socket.h>

#include <algorithm>

namespace toft::server {

namespace {

std::string address_of(const sockaddr* address) {
    char text[INET6_ADDRSTRLEN] = "";
    if (address->sa_family == AF_INET) {
        const auto* four = reinterpret_cast<const sockaddr_in*>(address);
        inet_ntop(AF_INET, &four->sin_addr, text, sizeof text);
    } else if (address->sa_family == AF_INET6) {
        const auto* six = reinterpret_cast<const sockaddr_in6*>(address);
        if (!IN6_IS_ADDR_LINKLOCAL(&six->sin6_addr)) {
            inet_ntop(AF_INET6, &six->sin6_addr, text, sizeof text);
        }
    }
    return text;
}

}  // namespace

std::vector<std::string> own_addresses() {
    std::vector<std::string> found;
    ifaddrs* all = nullptr;
    if (getifaddrs(&all) != 0) return found;
    for (const ifaddrs* one = all; one; one = one->ifa_next) {
        if (!one->ifa_addr || !(one->ifa_flags & IFF_UP) || (one->ifa_flags & IFF_LOOPBACK)) {
            continue;
        }
        std::string address = address_of(one->ifa_addr);
        if (!address.empty()) found.push_back(std::move(address));
    }
    freeifaddrs(all);
    std::stable_sort(found.begin(), found.end(), [](const std::string& a, const std::string& b) {
        const auto six = [](const std::string& text) {
            return text.find(':') != std::string::npos;
        };
        return six(a) < six(b);
    });
    return found;
}

}  // namespace toft::server
