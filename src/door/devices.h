#pragma once
// The devices that were let in. The store keeps a digest of what each was given, never the thing
// itself.

#include "base/outcome.h"
#include "store/store.h"

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
    bool known(const std::string& secret) const;
    std::vector<Device> all() const;
    /// False where there is none of that name.
    Outcome<bool> forget(store::Store& store, const std::string& device);

private:
    mutable std::mutex mutex_;
    std::map<std::string, Device> by_digest_;
};

/// The secret among cookies; empty where there is none.
std::string secret_in(const std::string& cookies);

/// Value of a Set-Cookie header.
std::string cookie_of(const std::string& secret);

}  // namespace toft::server
