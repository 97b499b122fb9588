#include "parts/word_column.h"

#include "parts/ink.h"
#include "parts/words.h"

#include <algorithm>

namespace toft::parts {

namespace {

constexpr double line_step = 1.3;
}  // namespace

void WordColumn::words(const std::string& words, const TextStyle& style, std::size_t most,
                       double indent) {
    for (const std::string& line : broken(words, width() - indent, style, most)) {
        y_ += line_step * style.size;
        items_.emplace_back(text({left_ + indent, y_ - 0.3 * style.size}, line, style));
    }
}

void WordColumn::heading(const std::string& what) {
    y_ += 14;
    items_.emplace_back(Line{{left_, y_}, {right_, y_}, stroked(palette::faint)});
    y_ += 4;
    words(what, {.size = 13, .weight = Weight::bold}, 3);
    y_ += 4;
}

void WordColumn::placed(Items items, double foot) {
    append(items_, std::move(items));
    y_ = std::max(y_, foot);
}

}  // namespace toft::parts
