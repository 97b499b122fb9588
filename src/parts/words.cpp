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

constexpr std::size_t longest = 4000;  // bytes of a text; no note has room for more

/// A space that lines are not broken at.
constexpr const char* held_space = "\xC2\xA0";

constexpr const char* units[] = {"m", "mm", "mm²", "A", "kA", "mA", "V", "Ω", "W", "%", "°C", "s"};

bool digit(char c) { return c >= '0' && c <= '9'; }

bool unit_at(const std::string& words, std::size_t at) {
    for (const std::string unit : units) {
        if (words.compare(at, unit.size(), unit) != 0) continue;
        const std::size_t after = at + unit.size();
        if (after == words.size() || words[after] == ' ' || words[after] == ',' ||
            words[after] == ';' || words[after] == ')' || words[after] == '.') {
            return true;
        }
    }
    return false;
}

/// `words` with each unit held to its figure.
std::string with_units_held(const std::string& words) {
    std::string held;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool hold = words[i] == ' ' && i > 0 && digit(words[i - 1]) && unit_at(words, i + 1);
        if (hold) {
            held += held_space;
        } else {
            held += words[i];
        }
    }
    return held;
}

/// Held spaces as plain ones.
std::string let_go(std::string line) {
    const std::string held = held_space;
    for (std::size_t at = line.find(held); at != std::string::npos; at = line.find(held, at)) {
        line.replace(at, held.size(), " ");
    }
    return line;
}

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

std::vector<std::string> broken(const std::string& words, double width,
                                const drawing::TextStyle& style, std::size_t most) {
    const std::string held = with_units_held(words.substr(0, longest));
    std::vector<std::string> lines = drawing::wrap(held, width, style.size, style.weight);
    if (lines.size() > most) {
        lines.resize(most);
        if (most > 0) lines.back() += " …";
    }
    for (std::string& line : lines) {
        line = shortened(let_go(line), width, style.size, style.weight);
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
