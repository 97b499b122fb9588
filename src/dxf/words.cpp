#include "dxf/words.h"

#include "drawing/utf8.h"

#include <fmt/format.h>

namespace toft::dxf {

namespace {

std::string coded(char32_t c) {
    if (c < 0x10000) return fmt::format("\\U+{:04X}", static_cast<unsigned>(c));
    const auto over = static_cast<unsigned>(c) - 0x10000;
    return fmt::format("\\U+{:04X}\\U+{:04X}", 0xD800 + (over >> 10), 0xDC00 + (over & 0x3FF));
}

std::string one(char32_t c) {
    if (c == U'%') return "%%%";
    if (c == U'^') return "^ ";
    if (c == U'\\' || c > 0x7E) return coded(c);
    if (c < 0x20) return " ";
    return std::string(1, static_cast<char>(c));
}

}  // namespace

std::string ascii(std::string_view text) {
    std::string out;
    for (const char32_t c : drawing::drawable(text)) out += one(c);
    return out;
}

std::vector<std::string> in_values(std::string_view text) {
    std::vector<std::string> parts;
    std::size_t used = longest_value;
    for (const char32_t c : drawing::drawable(text)) {
        const std::size_t more = one(c).size();
        if (used + more > longest_value) {
            parts.emplace_back();
            used = 0;
        }
        parts.back() += drawing::to_utf8(std::u32string(1, c));
        used += more;
    }
    return parts;
}

std::string layer_name(std::string_view kind) {
    std::string name;
    for (const char c : kind.substr(0, kind.find(' '))) {
        if (c >= 'a' && c <= 'z') {
            name += static_cast<char>(c - 'a' + 'A');
        } else if ((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_') {
            name += c;
        } else if (c == '-') {
            name += '_';
        }
        if (name.size() == 31) break;  // the longest that release 12 takes
    }
    return name.empty() ? "SHEET" : name;
}

}  // namespace toft::dxf
