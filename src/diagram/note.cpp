#include "diagram/note.h"

#include "diagram/ink.h"
#include "drawing/measure.h"

#include <algorithm>

namespace toft::diagram {

namespace {

constexpr std::size_t most_head_lines = 4;
constexpr std::size_t most_lines = 5;
/// The broken lines of `words` from `y` down; moves `y` to below them.
Items paragraph_items(const std::string& words, const Box& column, double& y,
                      const TextStyle& style) {
    Items items;
    const std::size_t most = style.weight == Weight::bold ? most_head_lines : most_lines;
    for (const std::string& line : broken(words, column.width(), style, most)) {
        y += style.size * 1.3;
        items.emplace_back(text({column.left, y - style.size * 0.3}, line, style));
    }
    return items;
}

Items one_figure(const Figure& figure, const Box& column, double& y, double letters) {
    Items items;
    const TextStyle plain_style{.size = letters, .colour = palette::graphite};
    TextStyle value_style{.size = letters, .anchor = Anchor::end};
    const std::string value = parts::shortened(figure.value, column.width(), letters);
    const double symbol_wide =
        figure.symbol.empty() ? 0 : text_width(figure.symbol, plain_style) + 5;
    const double value_wide = text_width(value, letters) + 10;
    const double word_wide = text_width(figure.word, letters);
    const bool apart = word_wide + symbol_wide + value_wide > column.width();
    const double room = column.width() - symbol_wide - (apart ? 0 : value_wide);
    const std::string word = parts::shortened(figure.word, room, letters);
    y += letters * 1.35;
    items.emplace_back(text({column.left, y - letters * 0.3}, word, plain_style));
    if (symbol_wide > 0) {
        const double x = column.left + text_width(word, letters) + 5;
        items.emplace_back(Text{{x, y - letters * 0.3}, figure.symbol, plain_style});
    }
    if (apart) y += letters * 1.35;
    items.emplace_back(text({column.right, y - letters * 0.3}, value, value_style));
    return items;
}

}  // namespace

SetNote set_note(const Note& note, const Columns& c, double top) {
    SetNote set;
    const double wide = note.figures.empty() ? c.right - c.words : c.words_width();
    const Box words = box_at({c.words, top}, wide, 0);
    double y = top;
    const TextStyle bold{.size = c.letters + 0.5, .weight = Weight::bold};
    append(set.items, paragraph_items(note.head, words, y, bold));
    for (const std::string& line : note.lines) {
        append(set.items, paragraph_items(line, words, y, TextStyle{.size = c.letters}));
    }
    double beside = c.figures_beside() ? top : y;
    const Box column = box_at({c.figures, top}, c.figures_width(), 0);
    for (const Figure& figure : note.figures) {
        append(set.items, one_figure(figure, column, beside, c.letters));
    }
    set.foot = std::max(y, beside) + 3;
    return set;
}

}  // namespace toft::diagram
