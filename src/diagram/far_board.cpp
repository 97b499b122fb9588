#include "diagram/far_board.h"

#include "diagram/run_figures.h"
#include "diagram/wording.h"
#include "parts/words.h"
#include "symbol/board.h"
#include "symbol/contact.h"
#include "symbol/fuse.h"
#include "symbol/machine.h"
#include "symbol/residual.h"
#include "symbol/strokes.h"

#include <algorithm>

namespace toft::diagram {

namespace {

constexpr double way_high = 46;
constexpr double way_at = 33;  // of the way's line below the row's top: the box stands above it

constexpr double load_in = 11;  // of what hangs on a way, its middle left of the words
constexpr double hang = 8;      // from the way's line down to what hangs below it
constexpr double between = 3;   // an inverter and what it serves

/// What guards a way, from the bar on.
Items way_symbol(const parts::Way& way, const Axis& axis, const Style& pen, double& length) {
    const bool fused = way.fused();
    if (!way.rcd && !way.residual_inside()) {
        length = fused ? fuse_length : contact_length;
        return fused ? fuse(axis, pen) : circuit_breaker(axis, pen);
    }
    if (!fused) {
        length = residual_length;
        return residual_breaker(axis, pen);
    }
    length = short_fuse_length + residual_length;
    Items items = short_fuse(axis, pen);
    append(items, residual_switch(axis.moved(short_fuse_length), pen));
    return items;
}

/// A motor, or an inverter with the source behind it, from the axis on down the sheet.
Items load_symbol(const parts::Way& way, const Axis& axis, const Style& pen) {
    if (parts::turns(way)) return motor(axis, pen);
    Items items = inverter(axis, pen);
    const Point foot = axis.at + (axis.along.y > 0 ? Point{0, machine_size}
                                                   : Point{machine_size / 2, machine_size / 2});
    items.emplace_back(Line{foot, foot + Point{0, between}, pen});
    const Axis below{foot + Point{0, between}, {0, 1}};
    append(items, way.facts->kind == site::CircuitKind::solar ? solar_generator(below, pen)
                                                              : battery(below, pen));
    return items;
}

/// How far what hangs on the way reaches below its line.
double load_depth(const parts::Way& way, bool below) {
    if (!parts::turns(way) && !parts::gives(way)) return 0;
    const double own = below ? hang + machine_size : machine_size / 2;
    return own + (parts::gives(way) ? between + battery_length : 0);
}

/// From the end of what guards the way to its load, or to an arrow.
Items way_end(const parts::Way& way, Point from, const Ladder& ladder) {
    const double words = ladder.columns().words;
    if (!parts::turns(way) && !parts::gives(way)) {
        return onward(from, {words - 6, from.y}, ladder.pen());
    }
    const double middle = words - load_in;
    if (from.x + 2 <= middle - machine_size / 2) {
        const Point at{middle - machine_size / 2, from.y};
        Items items{Line{from, at, ladder.pen()}};
        append(items, load_symbol(way, {at, {1, 0}}, ladder.pen()));
        return items;
    }
    const Point at{middle, from.y + hang};
    Items items{Polyline{{from, {middle, from.y}, at}, ladder.pen()}};
    append(items, load_symbol(way, {at, {0, 1}}, ladder.pen()));
    return items;
}

void draw_way(const parts::Way& way, int phases, bool last, Ladder& ladder) {
    constexpr double lead = 6;
    const Columns& c = ladder.columns();
    double length = 0;
    way_symbol(way, {{0, 0}, {1, 0}}, ladder.pen(), length);
    const bool below = c.live + lead + length + 2 > c.words - load_in - machine_size / 2;
    const double depth = load_depth(way, below);
    const Row row =
        ladder.row(way_note(way, phases), std::max(way_high, depth > 0 ? way_at + depth + 5 : 0));
    const double y = row.top + way_at;
    ladder.draw(busbar(ladder.on_live(row.top), ladder.on_live(last ? y + 4 : row.foot)));
    const Point start = ladder.on_live(y);
    Items items{Line{start, start + Point{lead, 0}, ladder.pen()}};
    append(items, way_symbol(way, {start + Point{lead, 0}, {1, 0}}, ladder.pen(), length));
    append(items, way_end(way, start + Point{lead + length, 0}, ladder));
    ladder.draw({Group{std::move(items), {}, "", "way", way.name}});
}

std::string device_line(const parts::Way& way) {
    if (!way.device) return "overcurrent rating: chosen with the circuit";
    const answer::DeviceAnswer& d = *way.device;
    std::string words = d.kind == "RCBO" ? "RCBO " : "";
    words += rating_words(d.standard, d.curve, d.rating_a);
    if (d.breaking_capacity_ka > 0) words += ", " + significant(d.breaking_capacity_ka, 3) + " kA";
    return words;
}

std::string residual_line(const parts::Way& way) {
    if (way.rcd) return "residual current " + residual_words(*way.rcd);
    return way.residual_inside() ? "residual current: not known" : "no residual current device";
}

std::vector<Figure> way_figures(const parts::Way& way) {
    std::vector<Figure> figures;
    if (way.facts && way.facts->load_w.known) {
        figures.push_back({"load", {}, fact_words(way.facts->load_w, "W")});
    }
    if (!way.design) return figures;
    for (const parts::MatterWords& m : parts::matters_of(*way.design)) {
        const bool symbol = m.symbol == "Zs";
        figures.push_back({m.word, symbol ? drawing::symbol("Z", "s") : drawing::Spans{}, m.value});
    }
    return figures;
}

}  // namespace

Note way_note(const parts::Way& way, int board_phases) {
    const std::string number = way.number > 0 ? std::to_string(way.number) + ": " : "";
    Note note{number + way.name + (way.phases == 3 ? ", three-phase" : "")};
    note.lines = {device_line(way), residual_line(way)};
    if (way.design) {
        note.lines.push_back(parts::circuit_cable_words(*way.design) + ", " +
                             significant(way.design->length_m, 4) + " m");
    }
    if (board_phases == 3) note.lines.push_back(parts::line_words(way, board_phases));
    for (const std::string& caution : parts::way_cautions(way)) {
        note.lines.push_back("caution: " + caution);
    }
    note.figures = way_figures(way);
    return note;
}

void draw_far_board(const picture::Stage& stage, Ladder& ladder) {
    ladder.use(pen_new());
    ladder.live(ladder.y(), ladder.y() + 5);
    ladder.skip(5);
    const double top = ladder.y();
    ladder.device({"board of " + parts::name_or(stage.far->name, stage.far->id) + ": main switch",
                   {stage.scheme->building.main_switch},
                   fault_figures(*stage.scheme)},
                  contact_length, switch_disconnector);
    const std::vector<parts::Way> ways = parts::ways_of(*stage.job, *stage.far, *stage.scheme);
    const int phases = stage.scheme->run.phases;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        draw_way(ways[i], phases, i + 1 == ways.size(), ladder);
    }
    const Columns& c = ladder.columns();
    ladder.draw_behind(enclosure({c.live - 27, top - 2, c.words - 20, ladder.y() - 2}));
    ladder.skip(6);
}

}  // namespace toft::diagram
