#include "diagram/run.h"

#include "base/text.h"
#include "diagram/lanes.h"
#include "diagram/run_figures.h"
#include "diagram/run_notes.h"
#include "parts/cable_words.h"
#include "symbol/board.h"
#include "symbol/cable_end.h"

#include <algorithm>

namespace toft::diagram {

namespace {

constexpr double core_tie = 8;    // below the end row's top, near the house
constexpr double spread_at = 13;  // of a pair
constexpr double gland_at = 15;   // of the gland's base
constexpr double armour_in = 8;   // of the far end row that armour still runs in

/// The heights between which a box or an end joins protective conductors.
class Ties {
public:
    void at(double y) {
        first_ = std::min(first_, y);
        last_ = std::max(last_, y);
        ++count_;
    }
    bool any() const { return count_ > 0; }
    double first() const { return first_; }
    double last() const { return last_; }

private:
    double first_ = 1e9;
    double last_ = -1e9;
    int count_ = 0;
};

/// The cable of one stretch, from its row's top to its foot.
void draw_stretch(const Stretch& stretch, const Note& note, Ladder& ladder) {
    const std::vector<Core> cores = cores_of(stretch.cable);
    const Row row = ladder.row(note, strokes_length(cores.size()) + 30);
    draw_lanes(stretch.cable, row.top, row.foot, ladder);
    const std::vector<double> lanes = lanes_of(stretch.cable);
    for (const double lane : lanes) {
        const Axis axis{ladder.on_live(row.middle()) + Point{lane, 0}, {0, 1}};
        Items marks = strokes(axis, cores, ladder.pen());
        // The number stands once, beside the first.
        if (lane != lanes.front()) marks.pop_back();
        ladder.draw(std::move(marks));
    }
}

void near_end(const RunLine& run, std::vector<Figure> figures, Ladder& ladder) {
    const answer::StretchAnswer& first = run.stretches.front().cable;
    Note note = near_note(run);
    note.figures = std::move(figures);
    const double gland_foot = gland_at + gland_length;
    const Row row = ladder.row(note, gland_foot + 14);
    const double ties = row.top + core_tie;
    double last = row.top;
    if (parts::core_serves(first)) {
        last = ties;
        tie_core(ties, ladder);
    }
    const double parts = row.top + spread_at;
    ladder.live(row.top, parts);
    spread(first, parts, ladder);
    answer::StretchAnswer bare = first;
    bare.armoured = false;
    if (first.armoured) {
        const double y = row.top + gland_foot + 5;
        draw_lanes(bare, parts, y, ladder);
        draw_glands(first, row.top + gland_at, 1, ladder);
        draw_lanes(first, y, row.foot, ladder);
        tie_armour(first, first.armour_near, y, ladder);
        if (first.armour_near) last = y;
    } else {
        draw_lanes(bare, parts, row.foot, ladder);
    }
    ladder.earth_to(last);
}

void far_end(const RunLine& run, std::vector<Figure> figures, Ladder& ladder) {
    const answer::StretchAnswer& final = run.stretches.back().cable;
    Note note = far_note(run);
    note.figures = std::move(figures);
    const Row row = ladder.row(note, 56);
    const double foot = row.top + armour_in + 5 + gland_length;
    answer::StretchAnswer bare = final;
    bare.armoured = false;
    draw_lanes(bare, row.top, foot + 2, ladder);
    spread(final, foot + 2, ladder);
    ladder.live(foot + 2, row.foot);
    double first = row.foot;
    if (final.armoured) {
        const double y = row.top + armour_in;
        draw_lanes(final, row.top, y, ladder);
        draw_glands(final, foot, -1, ladder);
        tie_armour(final, final.armour_far, y, ladder);
        if (final.armour_far) first = y;
    }
    if (parts::core_serves(final) && !run.earth_stops) {
        const double y = foot + 8;
        first = std::min(first, y);
        tie_core(y, ladder);
    }
    if (final.separate_mm2) {
        ladder.earth_to(row.foot);
    } else {
        ladder.earth_from(first);
    }
}

/// The cable of `cable` between the box and the row's edge, with its gland and its tie.
void box_end(const answer::StretchAnswer& cable, const Row& part, bool above, Ladder& ladder) {
    answer::StretchAnswer bare = cable;
    bare.armoured = false;
    const double edge = above ? part.foot - 2 : part.top + 2;
    draw_lanes(bare, above ? part.top : edge, above ? edge : part.foot, ladder);
    spread(cable, edge, ladder);
    ladder.live(above ? edge : part.top, above ? part.foot : edge);
    if (!cable.armoured) return;
    const double y = above ? part.top + 6 : part.foot - 6;
    draw_lanes(cable, above ? part.top : y, above ? y : part.foot, ladder);
    draw_glands(cable, above ? part.foot - 4 : part.top + 4, above ? -1 : 1, ladder);
    tie_armour(cable, above ? cable.armour_far : cable.armour_near, y, ladder);
}

/// Live conductors are joined in the middle of the box; protective conductors that leave their
/// cable are joined in their column.
void change_of_cable(const answer::StretchAnswer& before, const answer::StretchAnswer& after,
                     Ladder& ladder) {
    constexpr double end = 30;
    constexpr double box = 16;
    const Row row = ladder.row(joint_note(before, after), 2 * end + box);
    const double top = row.top + end;
    const double middle = top + box / 2;
    box_end(before, {row.top, top}, true, ladder);
    box_end(after, {top + box, top + box + end}, false, ladder);
    answer::StretchAnswer rest = after;
    draw_lanes(rest, top + box + end, row.foot, ladder);
    ladder.live(top, top + box);
    Ties ties;
    if (before.armoured && before.armour_far) ties.at(row.top + 6);
    if (after.armoured && after.armour_near) ties.at(top + box + end - 6);
    const bool cores = parts::core_serves(before) || parts::core_serves(after);
    const bool out = ties.any() || before.separate_mm2 || after.separate_mm2;
    if (cores && out) {
        ties.at(middle);
        tie_core(middle, ladder);
    }
    if (before.separate_mm2) ties.at(row.top);
    if (after.separate_mm2 && !ties.any()) ties.at(middle);
    if (ties.any()) {
        if (!before.separate_mm2) ladder.earth_from(ties.first());
        ladder.earth_to(ties.last());
    }
    const double x = ladder.columns().live;
    const double right = out ? ladder.columns().earth + 8 : x + 26;
    ladder.draw({Group{{enclosure({x - 26, row.top + 1, right, top + box + end - 1}).front(),
                        Circle{ladder.on_live(middle), 4, solid(ladder.pen())}},
                       {},
                       "",
                       "joint-box",
                       "joint box"}});
}

}  // namespace

void draw_run(const RunLine& run, const answer::SchemeAnswer& scheme, Ladder& ladder) {
    ladder.use(pen_new());
    const bool changes = run.stretches.size() > 1;
    std::vector<Figure> figures = cable_figures(scheme.run.figures, changes);
    near_end(run, changes ? figures : std::vector<Figure>{}, ladder);
    for (std::size_t i = 0; i < run.stretches.size(); ++i) {
        if (i > 0) change_of_cable(run.stretches[i - 1].cable, run.stretches[i].cable, ladder);
        Note note = stretch_note(run.stretches[i]);
        if (!changes) note.figures.insert(note.figures.end(), figures.begin(), figures.end());
        draw_stretch(run.stretches[i], note, ladder);
    }
    far_end(run, loop_figures(scheme), ladder);
}

}  // namespace toft::diagram
