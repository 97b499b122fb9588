#include "terrain/map_plot.h"

#include "drawing/hatch.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "drawing/placement.h"
#include "parts/words.h"
#include "terrain/above_level.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/scale.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toft::terrain {

namespace {

constexpr double tone = 0.055;  // that each level adds
constexpr double tallest = 760;

/// The map on the sheet, and what words must keep off.
struct Sheet {
    const MapOf& of;
    Box frame;
    double per_metre = 1;
    double letters = 11;
    Items items = {};
    std::vector<Box> taken = {};
    std::vector<Box> buildings = {};  ///< words keep off these too where they can

    Point at(GroundPoint p) const {
        const GroundPoint from = of.map.grid.origin;
        return {frame.left + per_metre * (p.east_m - from.east_m),
                frame.bottom - per_metre * (p.north_m - from.north_m)};
    }
    std::vector<Point> at(const std::vector<GroundPoint>& line) const {
        std::vector<Point> points;
        for (const GroundPoint p : line) points.push_back(at(p));
        return points;
    }
};

std::vector<const ContourLine*> in_order(const SurfaceMap& map) {
    std::vector<const ContourLine*> all;
    for (const ContourLine& contour : map.contours) all.push_back(&contour);
    std::stable_sort(all.begin(), all.end(),
                     [](const auto* a, const auto* b) { return a->level < b->level; });
    return all;
}

void tones(Sheet& sheet) {
    for (const ContourLine* contour : in_order(sheet.of.map)) {
        Path area{{}, filled(palette::earth, tone)};
        for (const auto& outline : above_level(sheet.of.map.grid, *contour)) {
            const std::vector<Point> points = sheet.at(outline);
            area.steps.push_back(MoveTo{points.front()});
            for (std::size_t i = 1; i < points.size(); ++i) {
                area.steps.push_back(LineTo{points[i]});
            }
            area.steps.push_back(Close{});
        }
        if (!area.steps.empty()) sheet.items.emplace_back(std::move(area));
    }
}

void lines(Sheet& sheet) {
    for (const ContourLine* contour : in_order(sheet.of.map)) {
        const bool volts = mark_at(sheet.of.job, sheet.of.fault, contour->level).has_value();
        Items drawn;
        for (const auto& line : contour->lines) {
            drawn.emplace_back(Polyline{sheet.at(line), contour_style(contour->level, volts)});
        }
        sheet.items.emplace_back(
            Group{std::move(drawn), {}, "", "contour", level_words(sheet.of, contour->level)});
    }
}

/// A house in plan: outline and masonry; an outbuilding: outline alone.
void building(Sheet& sheet, const SurfaceThing& thing) {
    const std::vector<Point> outline = sheet.at(thing.outline);
    if (outline.size() < 3) return;
    Items items;
    if (thing.kind == ThingKind::house) append(items, hatched(outline, {.spacing = 9}));
    items.emplace_back(Polygon{outline, stroked(palette::ink, weight::firm)});
    sheet.buildings.push_back(box_of(items));
    sheet.items.emplace_back(Group{std::move(items), {}, "", "building", thing.name});
}

void electrode(Sheet& sheet, const SurfaceThing& thing) {
    if (thing.outline.empty()) return;
    const Point centre = sheet.at(thing.outline.front());
    Style ring = stroked(palette::ink, 1.6);
    ring.fill = palette::paper;
    Items items{Circle{centre, 6, ring}, Circle{centre, 2.6, filled(palette::ink)}};
    sheet.taken.push_back(grown(Box{centre.x, centre.y, centre.x, centre.y}, 7));
    sheet.items.emplace_back(Group{std::move(items), {}, "", "electrode", thing.name});
}

/// How far a box is from all that words must keep off and from the map's edge, up to as far as
/// matters; 0 where it covers some.
double clearance(const Box& box, const Box& frame, const std::vector<Box>& taken) {
    constexpr double far_enough = 60;
    if (!contains(frame, box)) return 0;
    const double across = std::min(box.left - frame.left, frame.right - box.right);
    const double down = std::min(box.top - frame.top, frame.bottom - box.bottom);
    double clear = std::min({across + 1, down + 1, far_enough});
    for (const Box& other : taken) {
        if (overlap(other, box)) return 0;
        const double x = std::max({0.0, other.left - box.right, box.left - other.right});
        const double y = std::max({0.0, other.top - box.bottom, box.top - other.bottom});
        clear = std::min(clear, std::hypot(x, y) + 1);
    }
    return clear;
}

/// The box that keeps farthest from everything and from `besides`; null when each covers some.
const Box* clearest(const Sheet& sheet, const std::vector<Box>& boxes, std::vector<Box> besides) {
    besides.insert(besides.end(), sheet.taken.begin(), sheet.taken.end());
    const Box* best = nullptr;
    double most = 0;
    for (const Box& box : boxes) {
        const double clear = clearance(box, grown(sheet.frame, -3), besides);
        if (clear <= most) continue;
        most = clear;
        best = &box;
    }
    return best;
}

/// Places for a level's figure along its lines.
std::vector<Box> places_along(const Sheet& sheet, const ContourLine& contour, double wide) {
    std::vector<Box> boxes;
    const double high = sheet.letters + 3;
    for (const auto& line : contour.lines) {
        const std::size_t every = std::max<std::size_t>(1, line.size() / 24);
        for (std::size_t i = every / 2; i < line.size(); i += every) {
            const Point p = sheet.at(line[i]);
            boxes.push_back(box_at(p - Point{wide / 2, high / 2}, wide, high));
        }
    }
    return boxes;
}

void figures(Sheet& sheet) {
    for (const ContourLine* contour : in_order(sheet.of.map)) {
        const bool volts = mark_at(sheet.of.job, sheet.of.fault, contour->level).has_value();
        const std::string words = level_words(sheet.of, contour->level);
        TextStyle style{.size = sheet.letters,
                        .weight = volts ? Weight::bold : Weight::normal,
                        .anchor = Anchor::middle};
        const double wide = text_width(words, style.size, style.weight) + 4;
        const std::vector<Box> boxes = places_along(sheet, *contour, wide);
        const Box* best = clearest(sheet, boxes, sheet.buildings);
        if (!best) best = clearest(sheet, boxes, {});
        if (!best) continue;
        sheet.items.emplace_back(haloed(text({best->centre().x, best->bottom - 4}, words, style)));
        sheet.taken.push_back(*best);
    }
}

/// Names of buildings above or beside them, those of electrodes only in the list of signs.
void names(Sheet& sheet) {
    std::vector<Box> taken = sheet.taken;
    taken.insert(taken.end(), sheet.buildings.begin(), sheet.buildings.end());
    for (const SurfaceThing& thing : sheet.of.map.things) {
        const bool outlined = thing.outline.size() > 2;
        if (!outlined || thing.name.empty()) continue;
        TextStyle style{.size = sheet.letters + 1, .weight = Weight::bold};
        const std::string words =
            parts::shortened(thing.name, 0.4 * sheet.frame.width(), style.size, style.weight);
        const double wide = text_width(words, style.size, style.weight) + 2;
        Items outline{Polygon{sheet.at(thing.outline), stroked(palette::ink)}};
        const Box box = box_of(outline);
        const double high = style.size + 4;
        const double left = box.centre().x - wide / 2;
        const Wish wish{{box_at({left, box.top - high - 2}, wide, high),
                         box_at({left, box.bottom + 2}, wide, high),
                         box_at({box.right + 3, box.centre().y - high / 2}, wide, high),
                         box_at({box.left - 3 - wide, box.centre().y - high / 2}, wide, high)}};
        const auto place = placed({wish}, Room{sheet.frame, taken, 2}).front();
        if (!place.free) continue;
        sheet.items.emplace_back(
            haloed(text({place.box.left + 1, place.box.bottom - 4}, words, style)));
        sheet.taken.push_back(place.box);
        taken.push_back(place.box);
    }
}

/// A bar of a round length, and which way north is.
Items scale_bar(const Sheet& sheet, double y) {
    const double metres = rounded_down(0.3 * sheet.of.map.grid.east_m());
    const double long_ = metres * sheet.per_metre;
    const double left = sheet.frame.left;
    Items items;
    items.emplace_back(Rect{{left, y, left + long_ / 2, y + 5}, filled(palette::ink)});
    items.emplace_back(Rect{{left, y, left + long_, y + 5}, stroked(palette::ink)});
    const TextStyle style{.size = sheet.letters, .colour = palette::graphite};
    items.emplace_back(text({left + long_ + 8, y + 7}, metre_words(metres), style));
    if (!sheet.of.map.compass_known) return items;
    const double x = sheet.frame.right - 7;
    items.emplace_back(
        Polygon{{{x, y - 3}, {x + 5, y + 9}, {x, y + 6}, {x - 5, y + 9}}, filled(palette::ink)});
    TextStyle north = style;
    north.anchor = Anchor::end;
    items.emplace_back(text({x - 10, y + 7}, "north", north));
    return items;
}

}  // namespace

Style contour_style(double level, bool volts) {
    if (volts) return dashed(palette::accent, 2, {10, 4});
    if (level >= 0.2) return stroked(palette::ink, 1.8);
    if (level >= 0.05) return stroked(palette::ink, 1.1);
    return stroked(palette::graphite, weight::hair);
}

std::string level_words(const MapOf& of, double level) {
    if (const auto volts = mark_at(of.job, of.fault, level)) return figure_words(*volts) + " V";
    return share_words(level);
}

Drawn map_plot(const MapOf& of, const Space& room) {
    const SurfaceGrid& grid = of.map.grid;
    Sheet sheet{of, {}, 1, room.letters() - 1};
    const double most = room.beside ? tallest : std::clamp(1.2 * room.width(), 300.0, tallest);
    sheet.per_metre = std::min(room.width() / grid.east_m(), most / grid.north_m());
    const double wide = sheet.per_metre * grid.east_m();
    sheet.frame = box_at({room.left + (room.width() - wide) / 2, room.top + 4}, wide,
                         sheet.per_metre * grid.north_m());
    sheet.items.emplace_back(Rect{sheet.frame, filled(palette::paper)});
    tones(sheet);
    lines(sheet);
    for (const SurfaceThing& thing : of.map.things) {
        const bool outlined =
            thing.kind == ThingKind::house || thing.kind == ThingKind::outbuilding;
        outlined ? building(sheet, thing) : electrode(sheet, thing);
    }
    names(sheet);
    figures(sheet);
    sheet.items.emplace_back(Rect{sheet.frame, stroked(palette::graphite, weight::thin)});
    append(sheet.items, scale_bar(sheet, sheet.frame.bottom + 10));
    return {std::move(sheet.items), sheet.frame.bottom + 26};
}

}  // namespace toft::terrain
