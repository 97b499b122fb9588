#include "parts/words.h"

#include "base/text.h"
#include "drawing/measure.h"
#include "drawing/utf8.h"

#include <fmt/format.h>

namespace toft::parts {

namespace {

constexpr const char* dots = "…";

/// Longer texts are cut before they are measured: no line has room for so many characters.
constexpr std::size_t most_characters = 4000;

}  // namespace

std::string shortened(std::string_view text, double width, double size, drawing::Weight weight) {
    std::u32string letters = drawing::drawable(text);
    if (letters.size() > most_characters) letters.resize(most_characters);
    const std::string whole = drawing::to_utf8(letters);
    if (drawing::text_width(whole, size, weight) <= width) return whole;
    std::size_t fits = 0;
    std::size_t too_many = letters.size();
    while (too_many - fits > 1) {
        const std::size_t middle = (fits + too_many) / 2;
        const std::string part = drawing::to_utf8(letters.substr(0, middle)) + dots;
        (drawing::text_width(part, size, weight) <= width ? fits : too_many) = middle;
    }
    while (fits > 0 && letters[fits - 1] == U' ') --fits;
    return drawing::to_utf8(letters.substr(0, fits)) + dots;
}

std::vector<std::string> paragraph(std::string_view text, double width, double size,
                                   std::size_t most) {
    std::vector<std::string> lines;
    for (std::string& line : drawing::wrap(text.substr(0, most_characters), width, size)) {
        lines.push_back(shortened(line, width, size));
        if (lines.size() > most) break;
    }
    if (lines.size() > most) {
        lines.resize(most);
        if (most > 0) lines.back() = shortened(lines.back() + " " + dots, width, size);
    }
    return lines;
}

std::string mm2(double section) { return significant(section, 6) + " mm²"; }

std::string length_words(const site::Fact<Metres>& length) {
    if (!length.known) return "length not known";
    const std::string high = significant(length.high.number(), 4);
    if (length.single()) return high + " m";
    return fmt::format("{} to {} m", significant(length.low.number(), 4), high);
}

std::string name_or(const std::string& name, const std::string& id) {
    return name.empty() ? id : name;
}

std::string capital(std::string word) {
    if (!word.empty() && word[0] >= 'a' && word[0] <= 'z') {
        word[0] = static_cast<char>(word[0] - 'a' + 'A');
    }
    return word;
}

}  // namespace toft::parts
