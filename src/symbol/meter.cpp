#include "symbol/meter.h"

namespace toft::symbol {

namespace {

Items watt_hours(Point centre) {
    const Style pen = stroked(palette::ink, 1.2);
    const double x = centre.x - 9;
    const double foot = centre.y + 5;
    const double head = centre.y - 5;
    Items items{Polyline{
        {{x, head}, {x + 2.8, foot}, {x + 5.5, head + 2}, {x + 8.2, foot}, {x + 11, head}}, pen}};
    items.emplace_back(PathBuilder({x + 13.5, head})
                           .line({x + 13.5, foot})
                           .move({x + 13.5, foot - 3.5})
                           .quad({x + 16, foot - 7}, {x + 18.5, foot - 4})
                           .line({x + 18.5, foot})
                           .inked(pen));
    return items;
}

}  // namespace

Items energy_meter(const Axis& axis, const Style& pen) {
    constexpr double lead = 8;
    constexpr double half = (meter_length - 2 * lead) / 2;
    const Point c = axis.point(meter_length / 2);
    Items items{Line{axis.point(0), axis.point(lead), pen},
                Line{axis.point(meter_length - lead), axis.point(meter_length), pen},
                Rect{{c.x - half, c.y - half, c.x + half, c.y + half}, over_paper(pen)},
                Line{{c.x - half, c.y - half + 8}, {c.x + half, c.y - half + 8}, pen}};
    append(items, watt_hours(c + Point{0, 4}));
    return {Group{std::move(items), {}, "", "energy-meter", "energy meter"}};
}

Items alternating_source(const Axis& axis, const Style& pen) {
    constexpr double radius = 10;
    const Point c = axis.point(radius);
    Items items{Circle{c, radius, over_paper(pen)},
                Line{axis.point(2 * radius), axis.point(source_length), pen}};
    items.emplace_back(PathBuilder(c - Point{6, 0})
                           .quad(c + Point{-3, -7}, c)
                           .quad(c + Point{3, 7}, c + Point{6, 0})
                           .inked(stroked(*pen.stroke, 1.2)));
    return {Group{std::move(items), {}, "", "supply", "the operator's supply"}};
}

}  // namespace toft::symbol
