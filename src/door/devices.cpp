#include "door/devices.h"

#include "door/secret.h"
#include "http/json.h"

namespace toft::server {

namespace {

constexpr const char* beginning = "device:";
constexpr std::size_t most_secrets = 8;  // looked at in one request

std::string cookie_name(std::uint16_t port) { return "toft-pair-" + std::to_string(port) + "="; }

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

std::string Devices::named(const std::vector<std::string>& secrets) const {
    for (const std::string& secret : secrets) {
        const std::string key = digest(secret);
        const std::lock_guard lock(mutex_);
        const auto found = by_digest_.find(key);
        if (found != by_digest_.end()) return found->second.device;
    }
    return "";
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

std::vector<std::string> secrets_in(const std::string& cookies, std::uint16_t port) {
    const std::string name = cookie_name(port);
    std::vector<std::string> secrets;
    for (std::size_t at = 0; at < cookies.size() && secrets.size() < most_secrets;) {
        const std::size_t end = std::min(cookies.find(';', at), cookies.size());
        while (at < end && cookies[at] == ' ') ++at;
        if (cookies.compare(at, name.size(), name) == 0) {
            secrets.push_back(cookies.substr(at + name.size(), end - at - name.size()));
        }
        at = end + 1;
    }
    return secrets;
}

std::string cookie_of(const std::string& secret, std::uint16_t port) {
    return cookie_name(port) + secret + "; HttpOnly; SameSite=Strict; Path=/; Max-Age=31536000";
}

}  // namespace toft::server
