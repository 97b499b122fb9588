#include "door/secret.h"

#include <sodium.h>

#include <array>
#include <stdexcept>

namespace toft::server {

namespace {

void ready() {
    if (sodium_init() < 0) throw std::runtime_error("the system's random source cannot be used");
}

template <std::size_t N>
std::string hex(const std::array<unsigned char, N>& bytes) {
    std::string text(2 * N + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

}  // namespace

std::string random_letters(std::size_t count, std::string_view letters) {
    ready();
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        text += letters[randombytes_uniform(static_cast<std::uint32_t>(letters.size()))];
    }
    return text;
}

std::string random_token() {
    ready();
    std::array<unsigned char, 32> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    return hex(bytes);
}

Bits128 random_bits() {
    ready();
    Bits128 bits{};
    randombytes_buf(&bits, sizeof bits);
    return bits;
}

std::string digest(std::string_view text) {
    ready();
    std::array<unsigned char, 32> bytes{};
    crypto_generichash(bytes.data(), bytes.size(),
                       reinterpret_cast<const unsigned char*>(text.data()), text.size(), nullptr,
                       0);
    return hex(bytes);
}

bool same_secret(std::string_view a, std::string_view b) {
    return a.size() == b.size() && sodium_memcmp(a.data(), b.data(), a.size()) == 0;
}

}  // namespace toft::server
