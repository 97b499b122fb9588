#include "diagram/run.h"

#include "base/text.h"
#include "diagram/run_figures.h"
#include "picture/words.h"
#include "symbol/board.h"
#include "symbol/cable_end.h"

#include <fmt/format.h>

namespace toft::diagram {

namespace {

constexpr double core_tie = 8;   // below the end row's top, near the house
constexpr double gland_at = 15;  // of the gland's base

std::string core_words(const answer::CoreAnswer& core) {
    if (core.sleeve.empty()) return core.colour + " " + core.use;
    const std::string sleeve = core.sleeve == "green-yellow" ? "green-and-yellow" : core.sleeve;
    return fmt::format("{} (sleeved {}) {}", core.colour, sleeve, core.use);
}

template <class List, class Word>
std::string listed(const List& list, Word word) {
    std::string words;
    for (const auto& one : list) words += (words.empty() ? "" : "; ") + word(one);
    return words;
}

std::string armour_words(const RunLine& run) {
    if (!run.armour_serves()) return "armour (dashed): covering only";
    if (run.armour_far) return "armour (dashed): protective conductor";
    return "armour (dashed): earthed at the house only, to guard the cable itself";
}

Note stretch_note(const Stretch& s, const RunLine& run) {
    Note note;
    note.head = fmt::format("{}-core {} {}", s.cores, picture::mm2(s.live_mm2), s.family);
    note.figures = {{"length", {}, significant(s.length_m, 4) + " m"}};
    note.lines.push_back(listed(s.legs, [](const std::string& leg) { return leg; }));
    note.lines.push_back("cores: " + listed(s.core_list, core_words));
    if (armoured(s)) note.lines.push_back(armour_words(run));
    if (run.separate_mm2) {
        note.lines.push_back("beside it: protective conductor " + picture::mm2(*run.separate_mm2) +
                             " copper, green-and-yellow");
    }
    return note;
}

/// The cable of one stretch, from its row's top to its foot.
void draw_stretch(const Stretch& stretch, const Note& note, Ladder& ladder) {
    const std::vector<Core> cores = cores_of(stretch);
    const Row row = ladder.row(note, strokes_length(cores.size()) + 30);
    ladder.live(row.top, row.foot);
    if (armoured(stretch)) {
        ladder.draw(armour({ladder.on_live(row.top), {0, 1}}, row.foot - row.top));
    }
    ladder.draw(strokes({ladder.on_live(row.middle()), {0, 1}}, cores, ladder.pen()));
}

std::string end_words(bool earthed, const char* where) {
    return earthed ? std::string("armour earthed ") + where
                   : std::string("armour insulated ") + where + ": joined to nothing";
}

/// From the edge of the armour to the protective conductor's column, or the mark of an end that is
/// joined to nothing.
void tie_armour(bool earthed, double y, Ladder& ladder) {
    const Point edge = ladder.on_live(y) + Point{armour_reach, 0};
    if (earthed) {
        ladder.protective({edge, ladder.on_earth(y)});
        ladder.draw({Group{joint(edge, pen_new()), {}, "", "armour-earthed", "armour earthed"}});
        return;
    }
    Items bars;
    for (const double side : {-1.0, 1.0}) {
        const Point at = ladder.on_live(y) + Point{side * armour_reach, 0};
        bars.emplace_back(Line{at - Point{4, 0}, at + Point{4, 0}, pen_new()});
    }
    ladder.draw({Group{
        std::move(bars), {}, "", "armour-insulated", "armour insulated, joined to nothing"}});
}

void near_end(const RunLine& run, Ladder& ladder) {
    const Stretch& first = run.stretches.front();
    Note note{armoured(first) ? "gland at the house" : "cable leaves the house"};
    if (armoured(first)) note.lines.push_back(end_words(run.armour_near, "here"));
    const double gland_foot = gland_at + gland_length;
    const Row row = ladder.row(note, gland_foot + 14);
    ladder.live(row.top, row.foot);
    const double ties = row.top + core_tie;
    double last = row.top;
    if (run.core_serves()) {
        last = ties;
        ladder.protective({ladder.on_live(ties), ladder.on_earth(ties)});
        ladder.draw({Group{joint(ladder.on_live(ties), pen_new()), {}, "", "core-earthed", ""}});
    }
    if (armoured(first)) {
        const double y = row.top + gland_foot + 5;
        ladder.draw(gland({ladder.on_live(row.top + gland_at), {0, 1}}, ladder.pen()));
        ladder.draw(armour({ladder.on_live(y), {0, 1}}, row.foot - y));
        tie_armour(run.armour_near, y, ladder);
        if (run.armour_near) last = y;
    }
    ladder.earth_to(last);
}

void far_end(const RunLine& run, std::vector<Figure> figures, Ladder& ladder) {
    const Stretch& final = run.stretches.back();
    Note note{armoured(final) ? "gland at the outbuilding" : "cable enters the outbuilding"};
    if (armoured(final)) note.lines.push_back(end_words(run.armour_far, "here"));
    note.figures = std::move(figures);
    const Row row = ladder.row(note, 50);
    ladder.live(row.top, row.foot);
    double first = row.foot;
    if (armoured(final)) {
        const double y = row.top + 8;
        ladder.draw(armour({ladder.on_live(row.top), {0, 1}}, y - row.top));
        ladder.draw(gland({ladder.on_live(y + 5 + gland_length), {0, -1}}, ladder.pen()));
        tie_armour(run.armour_far, y, ladder);
        if (run.armour_far) first = y;
    }
    if (run.core_serves()) {
        const double y = row.top + 8 + 5 + gland_length + 8;
        first = std::min(first, y);
        ladder.protective({ladder.on_live(y), ladder.on_earth(y)});
        ladder.draw({Group{joint(ladder.on_live(y), pen_new()), {}, "", "core-earthed", ""}});
    }
    if (run.separate_mm2) {
        ladder.earth_to(row.foot);
    } else {
        ladder.earth_from(first);
    }
}

void change_of_cable(const Stretch& before, const Stretch& after, Ladder& ladder) {
    const bool both = armoured(before) && armoured(after);
    Note note{"joint box",
              {fmt::format("{} joined to {}", picture::mm2(before.live_mm2),
                           picture::mm2(after.live_mm2)),
               both ? "armour joined through it" : "armour ends here"}};
    const Row row = ladder.row(note, joint_box_length + 12);
    const double top = row.top + 6;
    ladder.live(row.top, top);
    ladder.draw(joint_box({ladder.on_live(top), {0, 1}}, ladder.pen()));
    ladder.live(top + joint_box_length, row.foot);
    if (!both) return;
    const double x = armour_reach + 5.5;
    for (const double side : {-1.0, 1.0}) {
        ladder.draw({Polyline{{ladder.on_live(row.top) + Point{side * armour_reach, 0},
                               ladder.on_live(top + 4) + Point{side * x, 0},
                               ladder.on_live(top + joint_box_length - 4) + Point{side * x, 0},
                               ladder.on_live(row.foot) + Point{side * armour_reach, 0}},
                              dashed(palette::ink, 1.3, {5, 3})}});
    }
}

}  // namespace

bool brings_earth(const RunLine& run) {
    return run.core_serves() || run.armour_far || run.separate_mm2.has_value();
}

void draw_run(const RunLine& run, const answer::SchemeAnswer& scheme, Ladder& ladder) {
    ladder.use(pen_new());
    near_end(run, ladder);
    for (std::size_t i = 0; i < run.stretches.size(); ++i) {
        if (i > 0) change_of_cable(run.stretches[i - 1], run.stretches[i], ladder);
        Note note = stretch_note(run.stretches[i], run);
        if (i == 0) {
            for (Figure& figure : cable_figures(scheme.run.figures)) note.figures.push_back(figure);
        }
        draw_stretch(run.stretches[i], note, ladder);
    }
    far_end(run, loop_figures(scheme), ladder);
}

}  // namespace toft::diagram
