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

constexpr double most_per_metre = 40;
constexpr double lane = 30;  // between lanes
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

/// Drawn sizes of house and outbuilding, user units: neither is surveyed.
struct Sizes {
    double house = 96;
    double building = 76;
};

Sizes sizes_for(const Space& space) { return space.phone ? Sizes{56, 40} : Sizes{}; }

/// Metres right of the outbuilding that the plan shows: an arm's reach, and the distance needed
/// when that is not much more than there is.
double beyond(const PlanOf& of) {
    const double between = distance_of(of.separation);
    const double needed = length_known(of.separation.needed_m) ? of.separation.needed_m : 0;
    const double reach = of.reach_m > 0 ? of.reach_m : 0;
    const bool in_sight = needed - between <= std::max(2 * between, 4 * reach);
    return in_sight ? std::max(reach, needed - between) : reach;
}

Plan plan_for(const PlanOf& of, const Space& space) {
    constexpr double edge = 12;
    const Sizes sizes = sizes_for(space);
    const double between = distance_of(of.separation);
    const double metres = std::max(between + beyond(of), 0.1);
    const double room = space.width() - sizes.house - sizes.building - 2 * edge;
    Plan plan{of, {}, std::min(room / metres, most_per_metre), 0, 0, 0, {}, {}, space.letters()};
    const double lanes = lanes_high(of.separation, space.phone);
    const double high = std::max(
        {lanes + 90, space.phone ? 260.0 : 340.0, 2 * plan.across(of.reach_m) + lanes + 40});
    plan.frame = {space.left, space.top + 4, space.right, space.top + 4 + std::min(high, 700.0)};
    const double spare = room - plan.across(metres);
    plan.house_x = space.left + edge + spare / 2 + sizes.house;
    plan.far_x = plan.house_x + plan.across(between);
    plan.middle = plan.frame.centre().y;
    const double half = lanes / 2 + 10;
    plan.house = {plan.house_x - sizes.house, plan.middle - half - 10, plan.house_x,
                  plan.middle + half + 10};
    plan.building = {plan.far_x, plan.middle - half, plan.far_x + sizes.building,
                     plan.middle + half};
    return plan;
}

/// A circle as far as it lies in the frame.
Items circle_in(const Box& frame, Point centre, double radius, const Style& style) {
    const int parts = static_cast<int>(std::clamp(radius, 240.0, 100000.0));
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

double ball_of(const answer::SeparationAnswer& s) {
    return length_known(s.house_radius_m) ? s.house_radius_m : 0;
}

/// Of the half ball whose edge is the nearest metal on the house's earth.
Point ball_centre(const Plan& plan) {
    return {plan.house_x - plan.across(ball_of(plan.of.separation)), plan.middle};
}

/// The ground round the house's earth: its half ball, and how far the electrode ought to be.
void ground_circles(const Plan& plan, Items& items) {
    const answer::SeparationAnswer& s = plan.of.separation;
    const double ball = ball_of(s);
    if (ball > 0) {
        append(items, circle_in(plan.frame, ball_centre(plan), plan.across(ball),
                                stroked(palette::earth, 1.4)));
    }
    if (length_known(s.needed_m)) {
        append(items, circle_in(plan.frame, ball_centre(plan), plan.across(ball + s.needed_m),
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

void keep_words(const Items& items, std::vector<Box>& taken) {
    for (const Item& item : items) {
        if (std::holds_alternative<Text>(item.shape)) taken.push_back(box_of(item));
        if (const auto* group = std::get_if<Group>(&item.shape)) keep_words(group->items, taken);
    }
}

/// Words in the middle of the first of these places that is free; none where there is no room.
void place_words(const Plan& plan, const std::string& words, const TextStyle& style,
                 const std::vector<Point>& middles, Items& items) {
    std::vector<Box> taken;
    keep_words(items, taken);
    const double wide = text_width(words, style.size, style.weight) + 4;
    const double high = style.size + 4;
    for (const Point p : middles) {
        const double x = std::clamp(p.x, plan.frame.left + wide / 2, plan.frame.right - wide / 2);
        const Box box = box_at({x - wide / 2, p.y - high / 2}, wide, high);
        const bool covers = std::any_of(taken.begin(), taken.end(),
                                        [&](const Box& other) { return overlap(other, box); });
        if (covers || !contains(plan.frame, box)) continue;
        items.emplace_back(
            haloed(text({box.left + 2, box.bottom - 4}, words, style), palette::wash));
        return;
    }
}

/// A name over its building or under it.
void name(const Plan& plan, const Box& box, const std::string& words, Items& items) {
    const TextStyle style{.size = plan.letters, .weight = Weight::bold};
    const std::string line =
        parts::shortened(words, 0.42 * plan.frame.width(), style.size, style.weight);
    const double x = box.centre().x;
    place_words(plan, line, style, {{x, box.top - 11}, {x, box.bottom + 11}}, items);
}

/// A word on a circle, near its top or wherever it is in sight.
void circle_word(const Plan& plan, double metres, const std::string& words, Items& items) {
    if (!length_known(metres)) return;
    std::vector<Point> middles;
    for (const double side : {1.0, -1.0}) {
        for (double turn = 10; turn <= 170; turn += 2) {
            const Point p =
                Point{plan.house_x, plan.middle} + turned({0, -plan.across(metres)}, side * turn);
            if (!contains(grown(plan.frame, -9), Box{p.x, p.y, p.x, p.y})) continue;
            middles.push_back(p + Point{side * 48, turn < 90 ? -6.0 : 6.0});
            middles.push_back(p);
        }
    }
    place_words(plan, words, {.size = plan.letters - 1}, middles, items);
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

Drawn separation_plan(const PlanOf& of, const Space& space) {
    const Plan plan = plan_for(of, space);
    Items items;
    items.emplace_back(Rect{plan.frame, filled(palette::wash)});
    ground_circles(plan, items);
    reach_round(plan, items);
    append(items, walls(plan.house));
    append(items, walls(plan.building));
    bridges(plan, lanes_drawn(of.separation, space.phone), items);
    distance_line(plan, items);
    name(plan, plan.house, "house", items);
    name(plan, plan.building, of.outbuilding, items);
    circle_word(plan, of.separation.needed_m, "needed: " + metre_words(of.separation.needed_m),
                items);
    return {std::move(items), plan.frame.bottom + 4};
}

}  // namespace toft::terrain
