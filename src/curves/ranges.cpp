#include "curves/ranges.h"

#include "base/text.h"
#include "curves/ink.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::curves {

namespace {

constexpr double figures_wide = 122;

void bar(const LogPaper& paper, const Range& range, double y, Items& items) {
    const Box box{paper.x(range.amperes.smallest), y - 3, paper.x(range.amperes.largest), y + 3};
    Style style = stroked(palette::ink, weight::thin);
    style.fill = range.far ? palette::ink : palette::paper;
    Items one;
    one.emplace_back(Rect{box, style});
    for (const double x : {box.left, box.right}) {
        one.emplace_back(Line{{x, y - 5}, {x, y + 5}, stroked(palette::ink, 1.6)});
    }
    items.emplace_back(Group{std::move(one), {}, "", "range", range.words});
}

}  // namespace

std::vector<Range> ranges_of(const answer::FigureAnswers& f) {
    std::vector<Range> ranges = {{"earth fault, far end", f.far_line_earth_a, true},
                                 {"line to neutral, far end", f.far_line_neutral_a, true}};
    if (f.far_line_line_a) ranges.push_back({"line to line, far end", *f.far_line_line_a, true});
    ranges.push_back({"earth fault, near end", f.near_line_earth_a, false});
    ranges.push_back({"line to neutral, near end", f.near_line_neutral_a, false});
    if (f.near_line_line_a) {
        ranges.push_back({"line to line, near end", *f.near_line_line_a, false});
    }
    return ranges;
}

std::string range_words(const answer::FaultRange& range) {
    const std::string low = ampere_words(range.smallest);
    const std::string high = ampere_words(range.largest);
    if (low == high) return high;
    const bool same_unit = (range.smallest >= 1000) == (range.largest >= 1000);
    const std::string start = same_unit ? low.substr(0, low.find(' ')) : low;
    return fmt::format("{} to {}", start, high);
}

Items range_rows(const LogPaper& paper, const std::vector<Range>& ranges, double top,
                 double right) {
    Items items;
    const double left = paper.box.right + 30;
    items.emplace_back(text({left, top - 4}, "fault currents of the run, smallest to largest",
                            {.size = letters, .weight = Weight::bold}));
    double y = top + range_row / 2;
    for (const Range& range : ranges) {
        items.emplace_back(
            Line{{paper.box.left, y}, {paper.box.right, y}, stroked(palette::faint)});
        bar(paper, range, y, items);
        const TextStyle words{.size = letters};
        const double room = right - figures_wide - left;
        items.emplace_back(
            text({left, y + 4}, parts::shortened(range.words, room, letters), words));
        const TextStyle figures{.size = letters, .weight = Weight::bold, .anchor = Anchor::end};
        items.emplace_back(text({right, y + 4}, range_words(range.amperes), figures));
        y += range_row;
    }
    return items;
}

Items tall_range_rows(const LogPaper& paper, const std::vector<Range>& ranges, double left,
                      double top) {
    Items items;
    const TextStyle bold{.size = paper.letters, .weight = Weight::bold};
    items.emplace_back(
        text({left, top + 14}, "fault currents of the run, smallest to largest", bold));
    double y = top + range_heading;
    for (const Range& range : ranges) {
        TextStyle figures = bold;
        figures.anchor = Anchor::end;
        items.emplace_back(text({left, y + 14}, range.words, {.size = paper.letters}));
        items.emplace_back(text({paper.box.right, y + 14}, range_words(range.amperes), figures));
        items.emplace_back(
            Line{{paper.box.left, y + 24}, {paper.box.right, y + 24}, stroked(palette::faint)});
        bar(paper, range, y + 24, items);
        y += tall_range_row;
    }
    return items;
}

}  // namespace toft::curves
