#include "digging/route_plan.h"

#include "digging/ink.h"
#include "digging/plan_field.h"
#include "digging/scale.h"
#include "digging/sheet.h"
#include "digging/signs.h"
#include "trench/words.h"

#include <algorithm>
#include <set>

namespace toft::digging {

namespace {

constexpr double sheet_high = units_of_mm(284);  // what a printed sheet of A4 shows unshrunk
constexpr double paper_field = units_of_mm(186);
constexpr double least_field = 330;
constexpr double sample = 40;

/// Samples of the lines and bands that occur, in rows.
void add_key(const trench::Works& works, parts::WordColumn& column) {
    std::set<Way> ways;
    std::set<site::Surface> surfaces;
    for (const trench::LegWork& leg : works.legs) {
        ways.insert(way_of(leg.leg.method, leg.stays));
        if (leg.trench && leg.leg.surface) surfaces.insert(*leg.leg.surface);
    }
    struct Entry {
        Items items;
        std::string words;
    };
    std::vector<Entry> entries;
    for (const Way way : ways) {
        entries.push_back({leg_line({2, 0}, {sample - 2, 0}, way), way_words(way)});
    }
    for (const site::Surface surface : surfaces) {
        entries.push_back({surface_band({2, 0}, {sample - 2, 0}, surface), site::word(surface)});
    }
    const double cell = std::max(190.0, column.width() / 3);
    const auto across = std::max(1, static_cast<int>(column.width() / cell + 1e-9));
    Items items;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const Point at{column.left() + cell * static_cast<double>(i % across),
                       column.y() + 10 + 20 * static_cast<double>(i / across)};
        items.emplace_back(Group{std::move(entries[i].items), at, "", "sheet", ""});
        items.emplace_back(text(at + Point{sample + 6, 4}, entries[i].words, {.size = 10.5}));
    }
    const auto rows = static_cast<double>((entries.size() + across - 1) / across);
    column.placed(std::move(items), column.y() + 20 * rows + 4);
}

void add_run(const trench::Works& works, std::size_t r, parts::WordColumn& column) {
    column.words(trench::run_words(works, r), {.size = 11, .weight = Weight::bold}, 3);
    std::string legs;
    for (const trench::LegWork& leg : works.legs) {
        if (leg.run != r) continue;
        legs += (legs.empty() ? "" : "; ") + leg.sign + " " + trench::length_words(leg.leg.length) +
                " " + trench::leg_words(works, leg);
    }
    say(column, legs + ".");
}

/// All legs in words, in two columns where the sheet is wide.
void add_lists(const trench::Works& works, parts::WordColumn& column) {
    column.heading("runs and legs");
    const std::size_t columns = column.width() >= 560 && works.job.runs.size() > 2 ? 2 : 1;
    const std::size_t half = (works.job.runs.size() + columns - 1) / columns;
    const double wide =
        (column.width() - 16.0 * static_cast<double>(columns - 1)) / static_cast<double>(columns);
    double foot = column.y();
    Items items;
    for (std::size_t c = 0; c < columns; ++c) {
        const double left = column.left() + static_cast<double>(c) * (wide + 16);
        parts::WordColumn one(left, left + wide, column.y());
        for (std::size_t r = c * half; r < std::min(works.job.runs.size(), (c + 1) * half); ++r) {
            add_run(works, r, one);
        }
        foot = std::max(foot, one.y());
        append(items, one.take());
    }
    column.placed(std::move(items), foot);
}

std::string description(const trench::Works& works) {
    std::string words;
    for (std::size_t r = 0; r < works.job.runs.size(); ++r) {
        words += trench::run_words(works, r) + ". ";
    }
    return words;
}

/// The sheet with the plan as high as it may be beside a list of legs, or without the list.
Measured with_list(const trench::Works& works, const trench::Plan& plan, const Wanted& wanted,
                   bool& list) {
    const double wide = width_of(wanted);
    const double margin = wanted.alone ? edge : 0;
    parts::WordColumn column(margin, wide - margin, margin);
    parts::WordColumn below(margin, wide - margin, 0);
    if (wanted.alone) sheet_head(column, "Route plan", works.job.title);
    if (list) add_lists(works, below);
    const double left = sheet_high - column.y() - below.y() - 190;
    const double high = wanted.alone ? std::clamp(left, least_field, paper_field) : paper_field;
    PlanField field = plan_field(works, plan, {margin, wide - margin, column.y(), high});
    Measured out{{}, field.one_to, field.zero};
    column.placed(std::move(field.items), field.foot);
    column.words(scale_words(field.one_to, wide, wanted.alone),
                 {.size = 11, .weight = Weight::bold});
    add_key(works, column);
    for (const std::string& words : plan.says) say_small(column, words);
    if (!field.all_said) {
        say_small(column, "Words that found no room on the plan stand in the list of legs.");
    }
    if (list) add_lists(works, column);
    if (wanted.alone) sheet_foot(column);
    list = wanted.alone && !field.all_said;
    out.scene.width = wide;
    out.scene.height = column.y() + std::max(margin, 2.0);
    out.scene.title = "Route plan: " + works.job.title;
    out.scene.description = description(works);
    out.scene.items = column.take();
    return out;
}

}  // namespace

Measured route_plan(const trench::Works& works, const Wanted& wanted) {
    const trench::Plan plan = trench::plan_of(works);
    bool list = false;
    Measured out = with_list(works, plan, wanted, list);
    return list ? with_list(works, plan, wanted, list) : out;
}

}  // namespace toft::digging
