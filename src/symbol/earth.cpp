#include "symbol/earth.h"

namespace toft::symbol {

namespace {

Items bars(Point at, double half, double step, const Style& pen) {
    Items items;
    for (int i = 0; i < 3; ++i) {
        const double reach = half * (1 - i / 3.0);
        items.emplace_back(Line{at + Point{-reach, step * i}, at + Point{reach, step * i}, pen});
    }
    return items;
}

}  // namespace

Items earth(Point at, const Style& pen) {
    Items items{Line{at, at + Point{0, 4}, pen}};
    append(items, bars(at + Point{0, 4}, 8, 3.6, pen));
    return {Group{std::move(items), {}, "", "earth", "earth"}};
}

Items protective_earth(Point centre, const Style& pen) {
    const Style thin = stroked(*pen.stroke, 1.2);
    Items items{Circle{centre, protective_earth_radius, over_paper(thin)},
                Line{centre - Point{0, 8}, centre - Point{0, 1}, thin}};
    append(items, bars(centre - Point{0, 1}, 6.5, 2.7, thin));
    return {Group{std::move(items), {}, "", "protective-earth", "protective earth"}};
}

Items electrode(Point top, double length, const Style& pen) {
    const double foot = top.y + length - earth_height;
    Items items{Rect{{top.x - 2.2, top.y, top.x + 2.2, foot}, over_paper(pen)}};
    append(items, earth({top.x, foot}, pen));
    return {Group{std::move(items), {}, "", "electrode", "earth electrode"}};
}

Items bonded_metal(Point at, const Style& pen) {
    Items items;
    for (const double side : {-4.0, 4.0}) {
        items.emplace_back(
            Line{at + Point{side, -11}, at + Point{side, 11}, stroked(palette::graphite, 1.4)});
    }
    items.emplace_back(Circle{at - Point{4, 0}, 3, solid(pen)});
    return {Group{std::move(items), {}, "", "bonded-metal", "metal that is bonded"}};
}

}  // namespace toft::symbol
