#pragma once
// The devices that were let in. The store keeps a digest of what each was given, never the thing
// itself.

#include "base/outcome.h"
#include "store/store.h"

#include <cstdint>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

namespace toft::server {

struct Device {
    std::string device;  ///< short name in lists, says nothing of its secret
    std::string name;    ///< as it calls itself
    std::string at;      ///< when it was let in
};

/// For any thread.
class Devices {
public:
    /// Those of the store.
    Faults load(store::Store& store);

    /// Lets a device in; the secret it must show from then on.
    Outcome<std::string> add(store::Store& store, const std::string& name, const std::string& at);
    /// Short name of the device that one of these was given to; empty where there is none.
    std::string named(const std::vector<std::string>& secrets) const;
    bool known(const std::vector<std::string>& secrets) const { return !named(secrets).empty(); }
    std::vector<Device> all() const;
    /// False where there is none of that name.
    Outcome<bool> forget(store::Store& store, const std::string& device);

private:
    mutable std::mutex mutex_;
    std::map<std::string, Device> by_digest_;
};

/// Every secret among cookies that a server at that port gave. Cookies know no port, so that their
/// name says it: two servers on one machine leave each other's alone.
std::vector<std::string> secrets_in(const std::string& cookies, std::uint16_t port);

/// Value of a Set-Cookie header.
std::string cookie_of(const std::string& secret, std::uint16_t port);

}  // namespace toft::server
