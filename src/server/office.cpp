#include "server/office.h"

#include "door/code_picture.h"

#include <fmt/format.h>

#include <ctime>

namespace toft::server {

std::string Office::address() const {
    std::string host = "localhost";
    if (door.lan && !door.addresses.empty()) {
        host = door.addresses.front();
        if (host.find(':') != std::string::npos) host = "[" + host + "]";
    }
    return fmt::format("http://{}:{}/", host, door.port);
}

void Office::show_code() { say_code(pairing.renew(seconds())); }

void Office::show_code_if_expired() {
    const auto code = pairing.renewed_if_expired(seconds());
    if (code) say_code(*code);
}

void Office::say_code(const std::string& code) const {
    if (!parts.say) return;
    parts.say(fmt::format(
        "\n{}\nOther devices: open {} and type the code {} within {:.0f} minutes, "
        "or point the camera at the picture.\n",
        code_for_terminal(address() + "#pair=" + code), address(), code, code_life / 60));
}

std::string now_text() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    gmtime_r(&now, &parts);
    char text[32] = "";
    std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &parts);
    return text;
}

}  // namespace toft::server
