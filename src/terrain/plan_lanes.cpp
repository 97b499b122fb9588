#include "terrain/plan_lanes.h"

#include "drawing/hatch.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "parts/words.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr double house_m = 5;     // drawn: the house's part beside its earth
constexpr double building_m = 3;  // drawn: the outbuilding, whose size is not surveyed
constexpr double lane = 30;       // between lanes
constexpr double wall = 5;

/// Where things of the plan stand on the sheet.
struct Plan {
    const PlanOf& of;
    Box frame;
    double per_metre = 1;
    double house_x = 0;  ///< of the house's earth
    double far_x = 0;    ///< of the outbuilding's electrode
    double middle = 0;   ///< of the line between them
    Box house;
    Box building;
    double letters = 12;

    double across(double metres) const { return metres * per_metre; }
};

bool length_known(double metres) { return std::isfinite(metres) && metres > 0; }

double distance_of(const answer::SeparationAnswer& s) {
    return std::isfinite(s.distance_m) ? std::max(0.0, s.distance_m) : 0;
}

/// Down from the line between the electrodes to lane `i` of `count`: half of the lanes lie above.
double lane_at(std::size_t i, std::size_t count) {
    const std::size_t above = count / 2;
    const double n = static_cast<double>(i) - static_cast<double>(above);
    return i < above ? 4 + lane * n : 38 + lane * n;
}

double lanes_high(const answer::SeparationAnswer& s, bool phone) {
    const std::size_t count = std::max<std::size_t>(lanes_drawn(s, phone), 1);
    return 2 * lane_at(count - 1, count) + 20;
}

/// Metres left of the house's earth and right of the electrode that the plan shows.
struct Extent {
    double left = 0;
    double right = 0;
};

Extent extent_of(const PlanOf& of) {
    const double between = distance_of(of.separation);
    const double needed = length_known(of.separation.needed_m) ? of.separation.needed_m : 0;
    const double beyond = std::max(building_m + of.reach_m, needed - between);
    return {house_m + 0.5, std::min(beyond, std::max(2 * between, building_m + of.reach_m)) + 0.7};
}

Plan plan_for(const PlanOf& of, const Space& room) {
    const Extent extent = extent_of(of);
    const double between = distance_of(of.separation);
    Plan plan{of, {}, 1, 0, 0, 0, {}, {}, room.letters()};
    plan.per_metre = room.width() / (extent.left + between + extent.right);
    const double lanes = lanes_high(of.separation, room.phone);
    const double high = std::max(
        {lanes + 90, room.phone ? 260.0 : 340.0, 2 * plan.across(of.reach_m) + lanes + 40});
    plan.frame = {room.left, room.top + 4, room.right, room.top + 4 + std::min(high, 640.0)};
    plan.house_x = room.left + plan.across(extent.left);
    plan.far_x = plan.house_x + plan.across(between);
    plan.middle = plan.frame.centre().y;
    const double half = lanes / 2 + 10;
    plan.house = {plan.house_x - plan.across(house_m), plan.middle - half - 10, plan.house_x,
                  plan.middle + half + 10};
    plan.building = {plan.far_x, plan.middle - half, plan.far_x + plan.across(building_m),
                     plan.middle + half};
    return plan;
}

/// A circle as far as it lies in the frame.
Items circle_in(const Box& frame, Point centre, double radius, const Style& style) {
    constexpr int parts = 240;
    Items items;
    std::vector<Point> run;
    for (int i = 0; i <= parts; ++i) {
        const Point p = centre + turned({radius, 0}, 360.0 * i / parts);
        const bool inside = contains(frame, Box{p.x, p.y, p.x, p.y});
        if (inside) run.push_back(p);
        if ((!inside || i == parts) && run.size() > 1) items.emplace_back(Polyline{run, style});
        if (!inside) run.clear();
    }
    return items;
}

Items walls(const Box& box) {
    const Box inside = grown(box, -wall);
    Items items;
    const std::vector<Box> sides = {{box.left, box.top, box.right, inside.top},
                                    {box.left, inside.bottom, box.right, box.bottom},
                                    {box.left, inside.top, inside.left, inside.bottom},
                                    {inside.right, inside.top, box.right, inside.bottom}};
    for (const Box& side : sides) append(items, hatched(side, masonry));
    items.emplace_back(Rect{box, stroked(palette::ink, weight::firm)});
    items.emplace_back(Rect{inside, stroked(palette::ink, weight::hair)});
    return items;
}

/// The ground round the house's earth: its half ball, and how far the electrode ought to be.
void ground_circles(const Plan& plan, Items& items) {
    const answer::SeparationAnswer& s = plan.of.separation;
    const Point centre{plan.house_x, plan.middle};
    if (length_known(s.house_radius_m)) {
        append(items, circle_in(plan.frame, centre, plan.across(s.house_radius_m),
                                stroked(palette::earth, 1.4)));
    }
    if (length_known(s.needed_m)) {
        append(items, circle_in(plan.frame, centre, plan.across(s.needed_m),
                                dashed(palette::accent, 2, {10, 4})));
    }
}

void reach_round(const Plan& plan, Items& items) {
    if (!length_known(plan.of.reach_m)) return;
    const double reach = plan.across(plan.of.reach_m);
    const Box box = grown(plan.building, reach);
    const Box seen{std::max(box.left, plan.frame.left), std::max(box.top, plan.frame.top),
                   std::min(box.right, plan.frame.right), std::min(box.bottom, plan.frame.bottom)};
    items.emplace_back(
        Rect{seen, dashed(palette::graphite, 1.2, {3, 3}), std::min(reach, seen.height() / 2)});
}

/// A sign of an electrode seen from above: a full disc in a ring.
Items electrode_mark(Point centre) {
    Style ring = stroked(palette::ink, 1.6);
    ring.fill = palette::paper;
    return {Circle{centre, 7, ring}, Circle{centre, 3, filled(palette::ink)}};
}

void pipe(Point from, Point to, const Style& ink, Items& items) {
    items.emplace_back(Line{from, to, stroked(palette::ink, 6)});
    items.emplace_back(Line{from, to, stroked(palette::paper, 3)});
    if (!ink.dash.empty()) items.emplace_back(Line{from, to, ink});
}

bool known_apart(const answer::BridgeAnswer& b) {
    return b.distance_m && std::isfinite(*b.distance_m);
}

/// Where a thing on the house's earth ends: short of the outbuilding by its distance.
double end_of(const Plan& plan, const answer::BridgeAnswer& bridge) {
    const double end = plan.building.left - plan.across(std::max(0.0, *bridge.distance_m));
    return std::clamp(end, plan.house.right, plan.building.left);
}

void gap(const Plan& plan, const answer::BridgeAnswer& bridge, double y, Items& items) {
    const double end = end_of(plan, bridge);
    if (plan.building.left - end < 2) return;
    append(items, span_mark({end + 2, y}, {plan.building.left - 1, y}, 1));
}

void bridge_line(const Plan& plan, const answer::BridgeAnswer& bridge, double y, Items& items) {
    const double start = plan.house.right - wall - 14;
    if (bridge.joins) {
        pipe({start, y}, {plan.building.left + wall + 14, y}, {}, items);
    } else if (known_apart(bridge)) {
        items.emplace_back(
            Line{{start, y}, {end_of(plan, bridge), y}, stroked(palette::ink, weight::heavy)});
        gap(plan, bridge, y, items);
    } else {
        items.emplace_back(
            Line{{start, y}, {plan.building.left, y}, dashed(palette::ink, 1.6, {3, 5})});
    }
}

std::string lane_words(const answer::BridgeAnswer& bridge) {
    if (bridge.joins) return bridge.what + ": runs on";
    if (known_apart(bridge)) return bridge.what + ": " + metre_words(*bridge.distance_m);
    return bridge.what + ": ?";
}

/// The disc at the house's end, and the name above the line where there is room to the electrode.
void bridges(const Plan& plan, std::size_t count, Items& items) {
    const auto& all = plan.of.separation.bridges;
    for (std::size_t i = 0; i < count; ++i) {
        const double y = plan.middle + lane_at(i, count);
        Items one;
        bridge_line(plan, all[i], y, one);
        const double x = plan.house.right - wall - 14 - disc_radius;
        append(one, disc({x, y}, std::to_string(i + 1)));
        const double left = plan.house.right + 8;
        const double room = plan.building.left - 8 - left;
        const std::string words = lane_words(all[i]);
        if (room > 90) {
            const TextStyle style{.size = plan.letters - 1, .halo = palette::wash};
            one.emplace_back(text({left, y - 6}, parts::shortened(words, room, style.size), style));
        }
        items.emplace_back(Group{std::move(one), {}, "", "bridge", all[i].what});
    }
}

/// A name over its box, inside the frame.
void name(const Box& frame, const Box& box, const std::string& words, Items& items) {
    constexpr double size = 12;
    TextStyle style{.size = size, .weight = Weight::bold, .anchor = Anchor::middle};
    const std::string line = parts::shortened(words, 0.42 * frame.width(), size, style.weight);
    const double half = text_width(line, size, style.weight) / 2 + 2;
    const double x = std::clamp(box.centre().x, frame.left + half, frame.right - half);
    items.emplace_back(haloed(text({x, box.top - 7}, line, style), palette::wash));
}

/// From electrode to electrode, its length over it.
void distance_line(const Plan& plan, Items& items) {
    const answer::SeparationAnswer& s = plan.of.separation;
    const Point from{plan.house_x, plan.middle};
    const Point to{plan.far_x, plan.middle};
    const bool known = std::isfinite(s.distance_m);
    if (plan.far_x - plan.house_x > 20) {
        items.emplace_back(Line{from, to, stroked(palette::graphite, weight::hair)});
    }
    append(items, electrode_mark(from));
    append(items, electrode_mark(to));
    const std::string words = known ? metre_words(distance_of(s)) : "distance not known";
    const TextStyle style{.size = plan.letters, .weight = Weight::bold, .anchor = Anchor::middle};
    const double half = text_width(words, style.size, style.weight) / 2;
    const double x = std::clamp((plan.house_x + plan.far_x) / 2, plan.frame.left + half,
                                plan.frame.right - half);
    items.emplace_back(haloed(text({x, plan.middle - 8}, words, style), palette::wash));
}

/// A word on a circle where it leaves the lanes: at its top, or where it meets the frame's top.
void circle_word(const Plan& plan, double metres, const std::string& words, double rise,
                 Items& items) {
    if (!length_known(metres)) return;
    const double radius = plan.across(metres);
    const double up = std::min(radius, plan.middle - plan.frame.top - rise);
    const double aside = std::sqrt(std::max(0.0, radius * radius - up * up));
    TextStyle style{.size = plan.letters - 1};
    const double wide = text_width(words, style.size);
    const double left =
        std::clamp(plan.house_x + aside + 6, plan.frame.left, plan.frame.right - wide - 2);
    items.emplace_back(haloed(text({left, plan.middle - up + 4}, words, style), palette::wash));
}

}  // namespace

std::size_t lanes_drawn(const answer::SeparationAnswer& separation, bool phone) {
    return std::min<std::size_t>(separation.bridges.size(), phone ? 6 : 10);
}

Items bridge_sign(const answer::BridgeAnswer& bridge, std::size_t number) {
    Items items;
    if (bridge.joins) {
        pipe({10, 10}, {sign_wide, 10}, {}, items);
    } else if (known_apart(bridge)) {
        items.emplace_back(Line{{10, 10}, {28, 10}, stroked(palette::ink, weight::heavy)});
        append(items, span_mark({30, 10}, {sign_wide, 10}, 1));
    } else {
        items.emplace_back(Line{{10, 10}, {sign_wide, 10}, dashed(palette::ink, 1.6, {3, 5})});
    }
    append(items, disc({disc_radius + 1, 10}, std::to_string(number + 1)));
    return items;
}

Drawn separation_plan(const PlanOf& of, const Space& room) {
    const Plan plan = plan_for(of, room);
    Items items;
    items.emplace_back(Rect{plan.frame, filled(palette::wash)});
    ground_circles(plan, items);
    reach_round(plan, items);
    append(items, walls(plan.house));
    append(items, walls(plan.building));
    bridges(plan, lanes_drawn(of.separation, room.phone), items);
    distance_line(plan, items);
    name(plan.frame, plan.house, "house", items);
    name(plan.frame, plan.building, of.outbuilding, items);
    circle_word(plan, of.separation.needed_m, "needed: " + metre_words(of.separation.needed_m), 14,
                items);
    return {std::move(items), plan.frame.bottom + 4};
}

}  // namespace toft::terrain
