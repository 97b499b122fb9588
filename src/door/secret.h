#pragma once
// What must not be guessed: random letters, tokens and their digests. From the system's source.

#include <string>
#include <string_view>

namespace toft::server {

/// `count` characters of `letters` (2 to 256 of them), each as likely as any other.
std::string random_letters(std::size_t count, std::string_view letters);

/// 64 hexadecimal digits, 256 bits.
std::string random_token();

/// 128 random bits.
struct Bits128 {
    unsigned long long high;
    unsigned long long low;
};
Bits128 random_bits();

/// BLAKE2b of 256 bits (RFC 7693) in hexadecimal digits. For tokens of full length only: it is no
/// password hash.
std::string digest(std::string_view text);

/// Compares in a time that tells nothing of where they differ.
bool same_secret(std::string_view a, std::string_view b);

}  // namespace toft::server
