#include "cli/layout.h"

#include <algorithm>
#include <cmath>

namespace toft::cli {

std::size_t width_of(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xc0) != 0x80;
    }));
}

std::string padded(const std::string& text, std::size_t width) {
    const std::size_t have = width_of(text);
    return have >= width ? text : text + std::string(width - have, ' ');
}

std::string wrapped(const std::string& lead, const std::string& text, std::size_t indent) {
    std::string out = lead;
    std::size_t column = width_of(lead);
    bool fresh = true;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        if (!fresh && column + 1 + width_of(word) > screen_width) {
            out += "\n" + std::string(indent, ' ');
            column = indent;
            fresh = true;
        }
        if (!fresh) {
            out += ' ';
            ++column;
        }
        out += word;
        column += width_of(word);
        fresh = false;
        at = end + 1;
    }
    return out + "\n";
}

std::string bar(double use, std::size_t cells) {
    const double clamped = std::isfinite(use) ? std::clamp(use, 0.0, 1.0) : 1.0;
    const auto full = static_cast<std::size_t>(std::lround(clamped * static_cast<double>(cells)));
    std::string text;
    for (std::size_t i = 0; i < cells; ++i) text += i < full ? "█" : "·";
    return text + (use > 1 ? "»" : " ");
}

}  // namespace toft::cli
