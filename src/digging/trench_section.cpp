#include "digging/trench_section.h"

#include "digging/cut.h"
#include "digging/ink.h"
#include "digging/scale.h"
#include "digging/sheet.h"
#include "drawing/measure.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::digging {

namespace {

constexpr double most_high_alone = 600;
constexpr double most_high = 450;     // of several
constexpr double cut_share = 0.56;    // of the sheet's width, for the trench and its ground
constexpr double words_beside = 480;  // from this width on words stand beside the drawing
constexpr double disc = 7.5;
constexpr double least_cell = 306;  // of a section with its numbers
constexpr double gutter = 24;       // between columns

double scale_for(const trench::Works& works, const std::vector<trench::Sort>& sorts, double wide) {
    double one_to = section_scales().front();
    for (const trench::Sort& sort : sorts) {
        const trench::Section& s = works.trenches[sort.trenches.front()].section;
        const double high = sorts.size() == 1 ? most_high_alone : most_high;
        const double room =
            wide >= words_beside ? cut_share * wide : wide - cut_left - cut_right - 3 * disc;
        one_to = std::max(one_to,
                          fitting(section_scales(), {s.width.number() + 2 * ground_shown,
                                                     s.depth.number() + ground_shown, room, high}));
    }
    return one_to;
}

Items numbered(Point at, std::size_t number) {
    Style ring = stroked(palette::ink, 0.9);
    ring.fill = palette::paper;
    return {Circle{at, disc, ring}, text(at + Point{0, 3.6}, std::to_string(number),
                                         {.size = 10, .anchor = Anchor::middle})};
}

/// Discs in a row down, none over another, as near as may be to what they tell of.
std::vector<double> levels(const std::vector<Pointed>& parts, double step, double top,
                           double bottom) {
    std::vector<double> at;
    double least = top;
    for (const Pointed& part : parts) {
        at.push_back(std::max(least, part.at.y));
        least = at.back() + step;
    }
    double most = bottom;
    for (std::size_t i = at.size(); i-- > 0;) {
        at[i] = std::min(at[i], std::max(most, top + step * static_cast<double>(i)));
        most = at[i] - step;
    }
    return at;
}

/// The drawing with its numbers, and the words that belong to them.
void add_cut(const tables::Trench& tables, const trench::Trench& trench, double one_to,
             parts::WordColumn& column, Point& zero) {
    const double shown = ground_shown * units_a_metre(one_to);
    zero = {column.left() + cut_left + shown, column.y() + cut_above};
    Cut one = cut(tables, trench, zero, one_to);
    std::stable_sort(one.parts.begin(), one.parts.end(),
                     [](const Pointed& a, const Pointed& b) { return a.at.y < b.at.y; });
    const double x =
        zero.x + trench.section.width.number() * units_a_metre(one_to) + shown + cut_right + disc;
    const bool beside = column.width() >= words_beside;
    const double step = beside ? 46 : 2 * disc + 3;
    const std::vector<double> at =
        levels(one.parts, step, zero.y + disc, one.box.bottom - cut_below);
    Items numbers, words;
    double foot = one.box.bottom;
    double next = 0;
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        parts::WordColumn beside_it(x + disc + 6, column.right(), std::max(next, at[i] - disc));
        const Point centre{x, beside ? beside_it.y() + disc : at[i]};
        numbers.emplace_back(
            Line{one.parts[i].at, centre, stroked(palette::graphite, weight::hair)});
        numbers.emplace_back(Circle{one.parts[i].at, 1.6, filled(palette::graphite)});
        append(numbers, numbered(centre, i + 1));
        if (!beside) continue;
        beside_it.words(one.parts[i].head, {.size = 10.5, .weight = Weight::bold}, 3);
        beside_it.words(one.parts[i].says, {.size = 10.5}, 4);
        next = beside_it.y() + 4;
        foot = std::max(foot, next);
        append(words, beside_it.take());
    }
    Items all = std::move(one.items);
    all.emplace_back(Group{std::move(numbers), {}, "", "words", ""});
    all.emplace_back(Group{std::move(words), {}, "", "words", ""});
    column.placed(std::move(all), foot);
    if (beside) return;
    for (std::size_t i = 0; i < one.parts.size(); ++i) {
        say(column, fmt::format("{}  {}: {}", i + 1, one.parts[i].head, one.parts[i].says));
    }
}

/// How far from each other things are kept, where there are several.
std::string clear_words(const tables::TrenchSizes& sizes, const std::vector<trench::Lying>& lying) {
    int power = 0;
    int data = 0;
    for (const trench::Lying& one : lying) {
        power += one.kind == trench::Kind::cable || one.kind == trench::Kind::duct;
        data += one.kind == trench::Kind::data;
    }
    std::string words;
    if (power > 1) {
        words += fmt::format("Clear between cables with power: {} mm. ",
                             1000 * sizes.power_apart.value.number());
    }
    if (power > 0 && data > 0) {
        words += fmt::format("Clear between power and data: {} mm.",
                             1000 * sizes.data_apart.value.number());
    }
    return words;
}

/// Gives where the trench's upper left corner stands.
Point add_sort(const tables::Trench& tables, const trench::Works& works, const trench::Sort& sort,
               double one_to, parts::WordColumn& column) {
    const trench::Trench& trench = works.trenches[sort.trenches.front()];
    column.words(sort_words(works, sort), {.size = 13, .weight = Weight::bold}, 4);
    column.gap(2);
    Point zero;
    add_cut(tables, trench, one_to, column, zero);
    const std::string clear = clear_words(tables.sizes, trench.lying);
    if (!clear.empty()) say_small(column, clear);
    column.gap(8);
    return zero;
}

/// Many sorts stand side by side, as many as have room.
std::size_t sorts_across(const trench::Works& works, double wide) {
    if (works.sorts.size() <= 2) return 1;
    const auto room = static_cast<std::size_t>((wide + gutter) / (least_cell + gutter));
    return std::clamp<std::size_t>(room, 1, works.sorts.size());
}

double cell_width(const trench::Works& works, double wide) {
    const auto across = static_cast<double>(sorts_across(works, wide));
    return (wide - (across - 1) * gutter) / across;
}

/// Left to itself, a sheet of many sorts is wide enough for three side by side.
double sheet_width(const trench::Works& works, const Wanted& wanted) {
    const bool free = wanted.alone && !(wanted.width > 0);
    if (!free || works.sorts.size() <= 4) return width_of(wanted);
    return 2 * edge + 3 * least_cell + 2 * gutter + 1;
}

void add_sorts(const tables::Trench& tables, const trench::Works& works, Measured& out,
               parts::WordColumn& column) {
    const double cell = cell_width(works, column.width());
    const std::size_t across = sorts_across(works, column.width());
    for (std::size_t i = 0; i < works.sorts.size(); i += across) {
        double foot = column.y();
        Items row;
        for (std::size_t k = i; k < std::min(works.sorts.size(), i + across); ++k) {
            const double left = column.left() + static_cast<double>(k - i) * (cell + gutter);
            parts::WordColumn one(left, left + cell, column.y());
            const Point zero = add_sort(tables, works, works.sorts[k], out.one_to, one);
            if (k == 0) out.zero = zero;
            foot = std::max(foot, one.y());
            append(row, one.take());
        }
        column.placed(std::move(row), foot);
    }
}

void add_fixed(const trench::Works& works, parts::WordColumn& column) {
    column.words(works.trenches.empty() ? "Nothing is dug: how each leg is fixed"
                                        : "Not in a trench: how it is fixed",
                 {.size = 13, .weight = Weight::bold}, 2);
    for (const trench::LegWork& leg : works.legs) {
        if (leg.trench) continue;
        say(column, fmt::format("{}  {}: {}, {}", leg.sign, trench::length_words(leg.leg.length),
                                trench::leg_words(works, leg), trench::fixed_words(leg.leg)));
    }
}

bool all_dug(const trench::Works& works) {
    return std::all_of(works.legs.begin(), works.legs.end(),
                       [](const trench::LegWork& leg) { return leg.trench.has_value(); });
}

void add_scale(double one_to, double wide, bool alone, parts::WordColumn& column) {
    column.words("Sizes in millimetres. " + scale_words(one_to, wide, alone),
                 {.size = 11, .weight = Weight::bold});
    const double most = std::min(240.0, 0.5 * column.width());
    Items bar = scale_bar(one_to, {column.left() + 2, column.y() + 4}, most);
    column.placed({Group{std::move(bar), {}, "", "scale", ""}}, column.y() + bar_high + 8);
}

void add_services(const tables::TrenchSizes& sizes, parts::WordColumn& column) {
    say_small(
        column,
        fmt::format("Keep {} mm from water, gas and other services at the least, more where "
                    "their owners say so; their drawings may be out by {} m sideways, and "
                    "tell no depth.",
                    1000 * sizes.pipe_apart.value.number(), sizes.position_doubt.value.number()));
}

void finish(Measured& out, const std::string& title, double wide, parts::WordColumn& column) {
    out.scene.width = wide;
    out.scene.title = title;
    out.scene.description = title;
    out.scene.height = column.y() + 4;
    out.scene.items = column.take();
}

}  // namespace

std::string sort_words(const trench::Works& works, const trench::Sort& sort) {
    const trench::Trench& first = works.trenches[sort.trenches.front()];
    std::string names;
    Metres length;
    for (std::size_t i = 0; i < sort.trenches.size(); ++i) {
        names += (i > 0 ? "; " : "") + trench::signs_of(works, works.trenches[sort.trenches[i]]);
        length += works.trenches[sort.trenches[i]].of.length;
    }
    const std::string under = first.surface ? site::word(*first.surface) : "surface not stated";
    return fmt::format("Trench of {}: {}, {} over the cable{}, {} long", names, under,
                       trench::metre_words(first.cover.depth),
                       first.cover.stated ? "" : " (not stated)", trench::metre_words(length));
}

Measured trench_sheet(const tables::Trench& tables, const trench::Works& works,
                      const Wanted& wanted) {
    const double wide = sheet_width(works, wanted);
    const double margin = wanted.alone ? edge : 0;
    parts::WordColumn column(margin, wide - margin, margin);
    Measured out;
    out.one_to = scale_for(works, works.sorts, cell_width(works, wide - 2 * margin));
    if (wanted.alone) sheet_head(column, "Trench section", works.job.title);
    add_sorts(tables, works, out, column);
    if (!works.sorts.empty()) {
        add_scale(out.one_to, wide, wanted.alone, column);
        add_services(tables.sizes, column);
    }
    column.gap(6);
    if (!all_dug(works)) add_fixed(works, column);
    if (!works.says.empty()) {
        column.gap(6);
        column.words("Before anything else", {.size = 13, .weight = Weight::bold}, 1);
    }
    for (const std::string& words : works.says) say(column, words);
    if (wanted.alone) sheet_foot(column);
    finish(out, "Trench section: " + works.job.title, wide, column);
    return out;
}

Measured trench_section(const tables::Trench& tables, const trench::Works& works, std::size_t sort,
                        double width) {
    parts::WordColumn column(0, width, 0);
    Measured out;
    out.one_to = scale_for(works, works.sorts, width);
    out.zero = add_sort(tables, works, works.sorts[sort], out.one_to, column);
    add_scale(out.one_to, width, false, column);
    finish(out, sort_words(works, works.sorts[sort]), width, column);
    return out;
}

}  // namespace toft::digging
