#include "diagram/lanes.h"

#include "symbol/board.h"
#include "symbol/cable_end.h"

namespace toft::diagram {

namespace {

constexpr double half_apart = 10;

}  // namespace

std::vector<double> lanes_of(const answer::CableAnswer& cable) {
    if (cable.parallel > 1) return {-half_apart, half_apart};
    return {0};
}

void draw_lanes(const answer::CableAnswer& cable, double top, double foot, Ladder& ladder) {
    for (const double lane : lanes_of(cable)) {
        const Point from = ladder.on_live(top) + Point{lane, 0};
        ladder.draw({Line{from, ladder.on_live(foot) + Point{lane, 0}, ladder.pen()}});
        if (cable.armoured) ladder.draw(armour({from, {0, 1}}, foot - top));
    }
}

void spread(const answer::CableAnswer& cable, double y, Ladder& ladder) {
    const std::vector<double> lanes = lanes_of(cable);
    if (lanes.size() < 2) return;
    ladder.draw({Group{{Line{ladder.on_live(y) + Point{lanes.front(), 0},
                             ladder.on_live(y) + Point{lanes.back(), 0}, ladder.pen()}},
                       {},
                       "",
                       "pair",
                       "two cables side by side"}});
}

void draw_glands(const answer::CableAnswer& cable, double base, double way, Ladder& ladder) {
    if (!cable.armoured) return;
    for (const double lane : lanes_of(cable)) {
        ladder.draw(gland({ladder.on_live(base) + Point{lane, 0}, {0, way}}, ladder.pen()));
    }
}

void tie_armour(const answer::CableAnswer& cable, bool earthed, double y, Ladder& ladder) {
    const std::vector<double> lanes = lanes_of(cable);
    const Point left = ladder.on_live(y) + Point{lanes.front() + armour_reach, 0};
    if (earthed) {
        ladder.protective({left, ladder.on_earth(y)});
        Items dots;
        for (const double lane : lanes) {
            append(dots, joint(ladder.on_live(y) + Point{lane + armour_reach, 0}, pen_new()));
        }
        ladder.draw({Group{std::move(dots), {}, "", "armour-earthed", "armour earthed"}});
        return;
    }
    Items bars;
    for (const double lane : lanes) {
        for (const double side : {-1.0, 1.0}) {
            const Point at = ladder.on_live(y) + Point{lane + side * armour_reach, 0};
            bars.emplace_back(Line{at - Point{3, 0}, at + Point{3, 0}, pen_new()});
        }
    }
    ladder.draw({Group{
        std::move(bars), {}, "", "armour-insulated", "armour insulated, joined to nothing"}});
}

void tie_core(double y, Ladder& ladder) {
    ladder.protective({ladder.on_live(y), ladder.on_earth(y)});
    ladder.draw({Group{joint(ladder.on_live(y), pen_new()), {}, "", "core-earthed", ""}});
}

}  // namespace toft::diagram
