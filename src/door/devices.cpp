#include "door/devices.h"

#include "door/secret.h"
#include "http/json.h"

namespace toft::server {

namespace {

constexpr const char* beginning = "device:";
constexpr const char* cookie_name = "toft-pair=";

/// A part of the digest tells devices apart and opens nothing.
std::string short_name(const std::string& digest) { return digest.substr(0, 12); }

Device device_of(const std::string& digest, const std::string& text) {
    const auto tree = codec::parse_document(text);
    Device device{short_name(digest), "", ""};
    if (!tree || !tree->is_object()) return device;
    device.name = tree->value("name", "");
    device.at = tree->value("at", "");
    return device;
}

}  // namespace

Faults Devices::load(store::Store& store) {
    const auto kept = store::settings(store, beginning);
    if (!kept) return kept.error();
    const std::lock_guard lock(mutex_);
    for (const auto& [name, text] : *kept) {
        const std::string digest = name.substr(std::string(beginning).size());
        by_digest_[digest] = device_of(digest, text);
    }
    return {};
}

Outcome<std::string> Devices::add(store::Store& store, const std::string& name,
                                  const std::string& at) {
    const std::string secret = random_token();
    const std::string key = digest(secret);
    const Json told = {{"name", name}, {"at", at}};
    const Faults faults = store::set_setting(store, beginning + key, text_of(told));
    if (!faults.empty()) return failed(faults);
    const std::lock_guard lock(mutex_);
    by_digest_[key] = Device{short_name(key), name, at};
    return secret;
}

bool Devices::known(const std::string& secret) const {
    if (secret.empty()) return false;
    const std::string key = digest(secret);
    const std::lock_guard lock(mutex_);
    return by_digest_.count(key) == 1;
}

std::vector<Device> Devices::all() const {
    const std::lock_guard lock(mutex_);
    std::vector<Device> devices;
    for (const auto& [key, device] : by_digest_) devices.push_back(device);
    return devices;
}

Outcome<bool> Devices::forget(store::Store& store, const std::string& device) {
    std::string key;
    {
        const std::lock_guard lock(mutex_);
        for (const auto& [digest, one] : by_digest_) {
            if (one.device == device) key = digest;
        }
        if (key.empty()) return false;
    }
    const Faults faults = store::drop_setting(store, beginning + key);
    if (!faults.empty()) return failed(faults);
    const std::lock_guard lock(mutex_);
    by_digest_.erase(key);
    return true;
}

std::string secret_in(const std::string& cookies) {
    const std::string name = cookie_name;
    for (std::size_t at = 0; at < cookies.size();) {
        const std::size_t end = std::min(cookies.find(';', at), cookies.size());
        while (at < end && cookies[at] == ' ') ++at;
        if (cookies.compare(at, name.size(), name) == 0) {
            return cookies.substr(at + name.size(), end - at - name.size());
        }
        at = end + 1;
    }
    return "";
}

std::string cookie_of(const std::string& secret) {
    return cookie_name + secret + "; HttpOnly; SameSite=Strict; Path=/; Max-Age=31536000";
}

}  // namespace toft::server
