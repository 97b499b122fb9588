#include "drawing/utf8.h"

#include <cstddef>

namespace toft::drawing {

namespace {

constexpr char32_t replacement = 0xFFFD;

struct Decoded {
    char32_t character = replacement;
    std::size_t bytes = 1;
};

struct Lead {
    std::size_t following = 0;
    char32_t bits = 0;
    unsigned char lowest = 0x80;  ///< of the first following byte
    unsigned char highest = 0xBF;
};

/// What a first byte promises; `following` 0 for a byte that starts nothing.
Lead lead_of(unsigned char byte) {
    if (byte >= 0xC2 && byte <= 0xDF) return {1, byte & 0x1Fu};
    if (byte == 0xE0) return {2, 0, 0xA0};
    if (byte == 0xED) return {2, 0xDu, 0x80, 0x9F};
    if (byte >= 0xE1 && byte <= 0xEF) return {2, byte & 0xFu};
    if (byte == 0xF0) return {3, 0, 0x90};
    if (byte == 0xF4) return {3, 4, 0x80, 0x8F};
    if (byte >= 0xF1 && byte <= 0xF3) return {3, byte & 7u};
    return {};
}

Decoded decode(std::string_view text) {
    const auto byte_at = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    if (byte_at(0) < 0x80) return {byte_at(0), 1};
    const Lead lead = lead_of(byte_at(0));
    if (lead.following == 0) return {};
    char32_t value = lead.bits;
    for (std::size_t i = 1; i <= lead.following; ++i) {
        const unsigned char low = i == 1 ? lead.lowest : 0x80;
        const unsigned char high = i == 1 ? lead.highest : 0xBF;
        if (i >= text.size() || byte_at(i) < low || byte_at(i) > high) return {replacement, i};
        value = (value << 6) | (byte_at(i) & 0x3Fu);
    }
    return {value, lead.following + 1};
}

bool between(char32_t c, char32_t low, char32_t high) { return c >= low && c <= high; }

bool is_space_like(char32_t c) {
    return c == '\t' || c == '\n' || c == '\r' || between(c, 0x2028, 0x2029);
}

bool is_left_out(char32_t c) {
    const bool control = c < 0x20 || between(c, 0x7F, 0x9F);
    const bool turns = c == 0x061C || between(c, 0x200E, 0x200F) || between(c, 0x202A, 0x202E) ||
                       between(c, 0x2066, 0x2069);
    return control || turns || c == 0xFEFF;
}

bool is_noncharacter(char32_t c) { return (c & 0xFFFE) == 0xFFFE || between(c, 0xFDD0, 0xFDEF); }

std::u32string cleaned(std::string_view text, bool keep_line_feeds) {
    std::u32string out;
    out.reserve(text.size());
    while (!text.empty()) {
        const Decoded next = decode(text);
        text.remove_prefix(next.bytes);
        if (keep_line_feeds && next.character == '\n') {
            out += U'\n';
        } else if (is_space_like(next.character)) {
            out += U' ';
        } else if (is_noncharacter(next.character)) {
            out += replacement;
        } else if (!is_left_out(next.character)) {
            out += next.character;
        }
    }
    return out;
}

}  // namespace

std::u32string drawable(std::string_view text) { return cleaned(text, false); }

std::u32string drawable_lines(std::string_view text) { return cleaned(text, true); }

void append_utf8(std::string& out, char32_t character) {
    const auto put = [&](char32_t byte) { out += static_cast<char>(byte); };
    if (character < 0x80) {
        put(character);
    } else if (character < 0x800) {
        put(0xC0 | (character >> 6));
        put(0x80 | (character & 0x3F));
    } else if (character < 0x10000) {
        put(0xE0 | (character >> 12));
        put(0x80 | ((character >> 6) & 0x3F));
        put(0x80 | (character & 0x3F));
    } else {
        put(0xF0 | (character >> 18));
        put(0x80 | ((character >> 12) & 0x3F));
        put(0x80 | ((character >> 6) & 0x3F));
        put(0x80 | (character & 0x3F));
    }
}

std::string to_utf8(std::u32string_view text) {
    std::string out;
    out.reserve(text.size());
    for (const char32_t character : text) append_utf8(out, character);
    return out;
}

}  // namespace toft::drawing
