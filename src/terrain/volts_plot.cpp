#include "terrain/volts_plot.h"

#include "drawing/label.h"
#include "drawing/measure.h"
#include "parts/words.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace toft::terrain {

namespace {

constexpr double figures_wide = 42;
constexpr double letter_room = 26;  // right of the paper, where the words stand elsewhere
constexpr double words_room = 210;  // … and where they stand there

BandInk ink_of(std::size_t number) {
    switch (number % 3) {
        case 0:
            return {stroked(palette::ink, 4.4), {.angle = -45, .spacing = 8}};
        case 1:
            return {dashed(palette::ink, 2, {9, 4}), {.angle = 45, .spacing = 8}};
        default:
            return {dashed(palette::ink, 2, {2, 3}), {.angle = 0, .spacing = 6}};
    }
}

bool not_negative(double figure) { return std::isfinite(figure) && figure >= 0; }

Paper paper_for(const answer::LostNeutralAnswer& fault, const Space& room) {
    double load = not_negative(fault.load_w) ? fault.load_w : 0;
    double volts = 0;
    for (const answer::LostNeutralWayAnswer& way : fault.ways) {
        for (const auto& p : drawable_points(way)) {
            load = std::max(load, p.load_w);
            volts = std::max(volts, p.high_v);
        }
    }
    for (const double mark : fault.marks_v) {
        if (not_negative(mark)) volts = std::max(volts, mark);
    }
    Paper paper;
    paper.letters = room.letters();
    const double right = room.width() >= 700 ? words_room : letter_room;
    const double high = room.beside ? 560 : std::clamp(0.8 * room.width(), 300.0, 520.0);
    paper.box = {room.left + figures_wide, room.top + 46, room.right - right, 0};
    paper.box.bottom = paper.box.top + high;
    paper.across = {0, load > 0 ? load : 1, paper.box.left, paper.box.right};
    paper.down = {0, volts > 0 ? 1.06 * volts : 1, paper.box.bottom, paper.box.top};
    return paper;
}

void ruling(const Paper& paper, Items& items) {
    std::vector<Step> across;
    for (const double watts : even_steps(paper.across, 7)) {
        across.push_back({watts, watts > 0 ? load_words(watts) : "0"});
    }
    std::vector<Step> up;
    for (const double volts : even_steps(paper.down, 8)) {
        up.push_back({volts, figure_words(volts) + " V"});
    }
    append(items, ruled(paper, across, up));
}

/// A level line with its figure, and where there is room what it belongs to.
void mark(const Paper& paper, double volts, Items& items) {
    const double y = paper.down.at(volts);
    items.emplace_back(
        Line{{paper.box.left, y}, {paper.box.right, y}, dashed(palette::accent, 1.4, {14, 4})});
}

void mark_figure(const Paper& paper, double volts, Items& items) {
    const TextStyle style{.size = paper.letters, .weight = Weight::bold};
    items.emplace_back(haloed(
        text({paper.box.left + 6, paper.down.at(volts) - 3.5}, figure_words(volts) + " V", style)));
}

/// Marks far enough apart for their figures; the larger of two that are not keeps its own.
std::vector<double> figured_marks(const Paper& paper, std::vector<double> marks) {
    std::sort(marks.rbegin(), marks.rend());
    std::vector<double> kept;
    for (const double mark : marks) {
        if (!not_negative(mark)) continue;
        const bool close =
            !kept.empty() && paper.down.at(mark) - paper.down.at(kept.back()) < paper.letters + 3;
        if (!close) kept.push_back(mark);
    }
    return kept;
}

void today(const Paper& paper, double watts, Items& items) {
    if (!not_negative(watts)) return;
    const double x = paper.across.at(watts);
    items.emplace_back(
        Line{{x, paper.box.bottom}, {x, paper.box.top - 10}, dashed(palette::ink, 1.6, {2, 3})});
    const std::string words = "reckoned with: up to " + load_words(watts);
    TextStyle style{.size = paper.letters, .weight = Weight::bold, .anchor = Anchor::middle};
    const double half = text_width(words, style.size, style.weight) / 2;
    const double middle = std::clamp(x, paper.box.left + half, paper.box.right - half);
    items.emplace_back(text({middle, paper.box.top - 14}, words, style));
}

/// A band's end at the right and what stands beside it.
struct Ending {
    std::size_t way = 0;
    Point target;
    double y = 0;
};

/// Keeps endings a label apart, inside the paper as far as there is room.
void push_apart(std::vector<Ending>& endings, double apart, double foot) {
    std::stable_sort(endings.begin(), endings.end(),
                     [](const Ending& a, const Ending& b) { return a.y < b.y; });
    for (std::size_t i = 1; i < endings.size(); ++i) {
        endings[i].y = std::max(endings[i].y, endings[i - 1].y + apart);
    }
    double most = foot;
    for (std::size_t i = endings.size(); i-- > 0;) {
        endings[i].y = std::min(endings[i].y, most);
        most = endings[i].y - apart;
    }
}

Items ending(const Paper& paper, const Ending& end, const answer::LostNeutralWayAnswer& way,
             double right) {
    const double left = paper.box.right + 10;
    Items items = leader({left, end.y, left, end.y}, end.target, palette::graphite);
    const bool words = right - left > 100;
    append(items, disc({left + disc_radius, end.y}, way_letter(end.way)));
    if (!words) return items;
    const double x = left + 2 * disc_radius + 5;
    const TextStyle bold{.size = 12, .weight = Weight::bold};
    double y = end.y + 4;
    for (const std::string& line : parts::broken(way.way, right - x, bold, 2)) {
        items.emplace_back(text({x, y}, line, bold));
        y += 15;
    }
    items.emplace_back(
        text({x, y}, parts::shortened(range_words(way.low_v, way.high_v, "V"), right - x, 12),
             {.size = 12}));
    return items;
}

void bands(const answer::LostNeutralAnswer& fault, const Paper& paper, double right, Items& items) {
    std::vector<Ending> endings;
    for (std::size_t i = 0; i < fault.ways.size(); ++i) {
        std::vector<Point> low, high;
        for (const auto& p : drawable_points(fault.ways[i])) {
            low.push_back(paper.at(p.load_w, p.low_v));
            high.push_back(paper.at(p.load_w, p.high_v));
        }
        if (low.empty()) continue;
        BandInk ink = ink_of(i);
        ink.washed = false;
        items.emplace_back(Group{band(low, high, ink), {}, "", "way", fault.ways[i].way});
        const Point middle = between(low.back(), high.back(), 0.5);
        endings.push_back({i, middle, middle.y});
    }
    push_apart(endings, right - paper.box.right > 100 ? 52 : 2 * disc_radius + 3,
               paper.box.bottom - 8);
    for (const Ending& end : endings) {
        append(items, ending(paper, end, fault.ways[end.way], right));
    }
}

}  // namespace

std::string way_letter(std::size_t number) {
    return std::string(1, static_cast<char>('a' + std::min<std::size_t>(number, 25)));
}

Items way_sign(std::size_t number) {
    Items items = disc({disc_radius + 1, 10}, way_letter(number));
    const BandInk ink = ink_of(number);
    for (const double y : {5.0, 15.0}) {
        items.emplace_back(Line{{2 * disc_radius + 4, y}, {sign_wide, y}, ink.edge});
    }
    return items;
}

std::vector<answer::LostNeutralPointAnswer> drawable_points(
    const answer::LostNeutralWayAnswer& way) {
    std::vector<answer::LostNeutralPointAnswer> points;
    for (const answer::LostNeutralPointAnswer& p : way.over_load) {
        if (!not_negative(p.load_w) || !not_negative(p.low_v) || !not_negative(p.high_v)) continue;
        points.push_back(p);
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const auto& a, const auto& b) { return a.load_w < b.load_w; });
    return points;
}

bool has_plot(const answer::LostNeutralAnswer& fault) {
    return std::any_of(fault.ways.begin(), fault.ways.end(),
                       [](const auto& way) { return !drawable_points(way).empty(); });
}

Drawn volts_plot(const answer::LostNeutralAnswer& fault, const Space& room) {
    if (!has_plot(fault)) return {{}, room.top};
    const Paper paper = paper_for(fault, room);
    Items items;
    ruling(paper, items);
    for (const double volts : fault.marks_v) {
        if (not_negative(volts)) mark(paper, volts, items);
    }
    bands(fault, paper, room.right, items);
    today(paper, fault.load_w, items);
    for (const double volts : figured_marks(paper, fault.marks_v)) {
        mark_figure(paper, volts, items);
    }
    const TextStyle axis{.size = paper.letters - 1, .colour = palette::graphite};
    items.emplace_back(text({room.left, paper.box.top - 32}, "volts against the ground", axis));
    TextStyle ending = axis;
    ending.anchor = Anchor::end;
    const double foot = paper.box.bottom + 2 * paper.letters + 7;
    items.emplace_back(text({paper.box.right, foot}, "load that is on", ending));
    return {std::move(items), foot + 8};
}

}  // namespace toft::terrain
