#include "diagram/far_board.h"

#include "diagram/run_figures.h"
#include "diagram/wording.h"
#include "parts/words.h"
#include "symbol/board.h"
#include "symbol/contact.h"
#include "symbol/fuse.h"
#include "symbol/residual.h"
#include "symbol/strokes.h"

#include <algorithm>

namespace toft::diagram {

namespace {

constexpr double way_high = 46;
constexpr double way_at = 33;  // of the way's line below the row's top: the box stands above it

const answer::RcdAnswer* rcd_for(const std::string& name,
                                 const std::vector<answer::RcdAnswer>& rcds) {
    for (const answer::RcdAnswer& rcd : rcds) {
        for (const std::string& covered : rcd.covers) {
            if (covered == name || covered == "every circuit") return &rcd;
        }
    }
    return nullptr;
}

Note way_note(const Way& way) {
    Note note{way.name + (way.phases == 3 ? ", three-phase" : "")};
    const std::string rating = way.device ? rating_words(way.device->standard, way.device->curve,
                                                         way.device->rating.number())
                                          : "overcurrent rating: chosen with the circuit";
    note.lines.push_back(rating);
    note.lines.push_back(way.rcd ? "residual current " + residual_words(*way.rcd)
                                 : "no residual current device");
    if (way.load_w && way.load_w->known) {
        note.figures = {{"load", {}, fact_words(*way.load_w, "W")}};
    }
    return note;
}

/// What guards a way, from the bar on.
Items way_symbol(const Way& way, const Axis& axis, const Style& pen, double& length) {
    const bool fused = way.device && way.device->curve.empty();
    if (!way.rcd) {
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

void draw_way(const Way& way, bool last, Ladder& ladder) {
    const Row row = ladder.row(way_note(way), way_high);
    const double y = row.top + way_at;
    ladder.draw(busbar(ladder.on_live(row.top), ladder.on_live(last ? y + 4 : row.foot)));
    constexpr double lead = 6;
    const Point start = ladder.on_live(y);
    double length = 0;
    Items items{Line{start, start + Point{lead, 0}, ladder.pen()}};
    append(items, way_symbol(way, {start + Point{lead, 0}, {1, 0}}, ladder.pen(), length));
    append(items,
           onward(start + Point{lead + length, 0}, {ladder.columns().words - 6, y}, ladder.pen()));
    ladder.draw({Group{std::move(items), {}, "", "way", way.name}});
}

}  // namespace

std::vector<Way> ways_of(const picture::Stage& stage) {
    const std::vector<answer::RcdAnswer>& rcds = stage.scheme->building.rcds;
    std::vector<Way> ways;
    for (const site::Circuit& circuit : stage.far->circuits) {
        ways.push_back({circuit.name, circuit.device ? &*circuit.device : nullptr,
                        rcd_for(circuit.name, rcds), &circuit.load_w, circuit.phases});
    }
    for (const answer::RcdAnswer& rcd : rcds) {
        for (const std::string& name : rcd.covers) {
            const bool told = std::any_of(ways.begin(), ways.end(), [&](const Way& way) {
                return way.name == name || name == "every circuit";
            });
            if (!told) ways.push_back({name, nullptr, &rcd, nullptr});
        }
    }
    return ways;
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
    const std::vector<Way> ways = ways_of(stage);
    for (std::size_t i = 0; i < ways.size(); ++i) draw_way(ways[i], i + 1 == ways.size(), ladder);
    const Columns& c = ladder.columns();
    ladder.draw_behind(enclosure({c.live - 27, top - 2, c.words - 20, ladder.y() - 2}));
    ladder.skip(6);
}

}  // namespace toft::diagram
