#include "swing/rows.h"

#include "base/text.h"
#include "drawing/hatch.h"
#include "drawing/measure.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace toft::swing {

namespace {

using namespace drawing;
using drawing::Line;
using drawing::Point;
using terrain::Drawn;
using terrain::Space;

constexpr double bar_high = 13;
constexpr double row_gap = 9;
constexpr double least_swing = 5e-4;
constexpr double most_shown = 2;  ///< share of a limit; beyond that it is missed by as much again
constexpr std::array<double, 5> steps{0.05, 0.1, 0.2, 0.25, 0.5};

double clipped(double use) {
    return std::isfinite(use) ? std::clamp(use, 0.0, most_shown) : most_shown;
}

/// Shares of limits across the page, from none; the limit itself is always on it.
struct Axis {
    double high = 1.05;
    double left = 0, right = 0;

    double at(double use) const { return left + clipped(use) / high * (right - left); }
};

Axis axis_for(const std::vector<tolerance::Swing>& swings, const Space& room) {
    Axis axis{1.05, room.left + 14, room.right - 14};
    for (const auto& s : swings) {
        axis.high =
            std::max({axis.high, clipped(s.low.use[s.moved]), clipped(s.high.use[s.moved])});
    }
    return axis;
}

/// The finest step whose figures have room beside each other.
double step_for(const Axis& axis, double room_for_one) {
    for (const double step : steps) {
        const double apart = step / axis.high * (axis.right - axis.left);
        if (apart >= room_for_one) return step;
    }
    return 1;
}

/// Words from `top`, and the line below them; names that do not fit are cut.
double say_lines(Items& items, const Space& room, double top, const std::string& words,
                 const TextStyle& style) {
    parts::WordColumn column(room.left, room.right, top);
    column.words(words, style, 3);
    append(items, column.take());
    return column.y();
}

double scale(Items& items, const Space& room, const Axis& axis, double top) {
    const double size = room.letters() - 1;
    const double step = step_for(axis, text_width("100 %", size) + 12);
    const double base = top + size * line_spacing;
    for (double k = 0; k * step <= axis.high + 1e-9; ++k) {
        const double x = axis.at(k * step);
        items.push_back(
            text({x, base - 4}, fixed(k * step * 100, 0) + " %",
                 {.size = size, .anchor = Anchor::middle, .colour = palette::graphite}));
        items.push_back(Line{{x, base}, {x, base + 4}, stroked(palette::graphite)});
    }
    items.push_back(Line{{axis.left, base}, {axis.right, base}, stroked(palette::graphite)});
    return base + 4;
}

Box bar_between(const Axis& axis, double a, double b, double top) {
    const double left = std::min(axis.at(a), axis.at(b));
    const double right = std::max(axis.at(a), axis.at(b));
    return {left, top, right, top + bar_high};
}

/// The likeliest share and, at 100 %, the limit.
void mark(Items& items, double x, double top, bool limit) {
    const Style style =
        limit ? dashed(palette::accent, weight::firm, {7, 4}) : stroked(palette::ink, weight::firm);
    items.push_back(Line{{x, top}, {x, top + bar_high + 4}, style});
}

double swing_row(Items& items, const tolerance::Tolerance& found, const tolerance::Swing& s,
                 const std::pair<Axis, Space>& page, double top) {
    const auto& [axis, room] = page;
    const auto& v = found.varied[s.varied];
    const bool moves = s.size() >= least_swing;
    top = say_lines(
        items, room, top + row_gap,
        fmt::format("{}, {} to {}: {}{}", v.says, outlook::figure_words(v.low, v.unit),
                    outlook::figure_words(v.high, v.unit), rules::rulebook()[s.moved].info->name,
                    moves ? ", and with it the headroom" : ""),
        {.size = room.letters()});
    top += 5;
    const double likely = found.tornado.likely.use[s.moved];
    append(items, low_bar(bar_between(axis, likely, s.low.use[s.moved], top)));
    append(items, high_bar(bar_between(axis, likely, s.high.use[s.moved], top)));
    mark(items, axis.at(likely), top - 2, false);
    mark(items, axis.at(1), top - 2, true);
    return top + bar_high + 2;
}

double swing_rows(Items& items, const tolerance::Tolerance& found, const Space& room, double top) {
    const auto swings = shown_swings(found);
    const double size = room.letters();
    top = say_lines(items, room, top,
                    "share of its limit, of the rule that each figure alone moves most",
                    {.size = size, .weight = Weight::bold});
    if (swings.empty()) {
        return say_lines(items, room, top, "No figure moves any rule.", {.size = size});
    }
    const Axis axis = axis_for(swings, room);
    top = scale(items, room, axis, top + 4);
    for (const auto& s : swings) top = swing_row(items, found, s, {axis, room}, top);
    return top + 4;
}

double rule_rows(Items& items, const tolerance::Tolerance& found, const Space& room, double top) {
    const double size = room.letters();
    top = say_lines(items, room, top + 22, "chance that each rule holds",
                    {.size = size, .weight = Weight::bold});
    const auto rules = shown_rules(found);
    if (rules.empty()) {
        return say_lines(items, room, top + row_gap,
                         "Every rule holds wherever in the ranges the figures are.",
                         {.size = size});
    }
    for (const auto& r : rules) {
        top = say_lines(items, room, top + row_gap,
                        fmt::format("{}: {}", r.rule->name, outlook::chance_words(r.chance)),
                        {.size = size});
        top += 3;
        const Box whole{room.left + 14, top, room.right - 14, top + bar_high};
        Box held = whole;
        held.right = whole.left + whole.width() * r.chance.holds;
        items.push_back(Rect{whole, stroked(palette::ink)});
        if (held.width() > 0) items.push_back(Rect{held, filled(palette::graphite)});
        top += bar_high;
    }
    return top;
}

}  // namespace

std::vector<tolerance::Swing> shown_swings(const tolerance::Tolerance& found) {
    std::vector<tolerance::Swing> shown;
    for (const auto& s : found.tornado.swings) {
        if (s.use_moved() >= least_swing && shown.size() < most_rows) shown.push_back(s);
    }
    return shown;
}

std::vector<tolerance::RuleOver> shown_rules(const tolerance::Tolerance& found) {
    std::vector<tolerance::RuleOver> shown;
    for (const auto& r : found.rules) {
        if (!r.holds_at_worst && shown.size() < most_rows) shown.push_back(r);
    }
    return shown;
}

Items low_bar(const Box& box) {
    Items items{Rect{box, filled(palette::paper)}};
    append(items, hatched(box, {.angle = -45, .spacing = 4, .style = stroked(palette::ink, 0.9)}));
    items.push_back(Rect{box, stroked(palette::ink)});
    return items;
}

Items high_bar(const Box& box) {
    return {Rect{box, {.stroke = palette::ink, .fill = palette::graphite}}};
}

Drawn rows(const tolerance::Tolerance& found, const Space& room) {
    Drawn drawn;
    const double below = swing_rows(drawn.items, found, room, room.top);
    drawn.foot = rule_rows(drawn.items, found, room, below) + 6;
    return drawn;
}

}  // namespace toft::swing
