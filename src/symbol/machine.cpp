#include "symbol/machine.h"

namespace toft::symbol {

namespace {

constexpr double half_size = machine_size / 2;

Item small_wave(Point centre, double reach) {
    return PathBuilder(centre - Point{reach, 0})
        .quad(centre + Point{-reach / 2, -reach}, centre)
        .quad(centre + Point{reach / 2, reach}, centre + Point{reach, 0})
        .inked(stroked(palette::ink, 1));
}

/// The plates of one cell across the axis: the long one first.
void add_cell(const Axis& axis, double at, double reach, Items& items) {
    items.emplace_back(
        Line{axis.point(at, -reach), axis.point(at, reach), stroked(palette::ink, 1.1)});
    items.emplace_back(Line{axis.point(at + 3.5, -reach / 2), axis.point(at + 3.5, reach / 2),
                            stroked(palette::ink, 2.2)});
}

Box around_axis(const Axis& axis) { return grown(joined(Box{}, axis.point(half_size)), half_size); }

}  // namespace

Items motor(const Axis& axis, const Style& pen) {
    const Point c = axis.point(half_size);
    const Style thin = stroked(*pen.stroke, 1.3);
    Items items{Circle{c, half_size, over_paper(thin)}};
    const double head = c.y - 4.5;
    const double foot = c.y + 1.5;
    items.emplace_back(Polyline{{{c.x - 3.5, foot},
                                 {c.x - 3.5, head},
                                 {c.x, foot - 1.5},
                                 {c.x + 3.5, head},
                                 {c.x + 3.5, foot}},
                                stroked(palette::ink, 1.1)});
    items.push_back(small_wave(c + Point{0, 4.4}, 2.6));
    return {Group{std::move(items), {}, "", "motor", "motor"}};
}

Items inverter(const Axis& axis, const Style& pen) {
    const Box box = around_axis(axis);
    const Style thin = stroked(*pen.stroke, 1.3);
    Items items{Rect{box, over_paper(thin)}};
    items.emplace_back(Line{{box.left, box.bottom}, {box.right, box.top}, thin});
    items.push_back(small_wave({box.left + 4.6, box.top + 4.4}, 2.8));
    for (const double y : {box.bottom - 5.6, box.bottom - 3}) {
        items.emplace_back(
            Line{{box.right - 7, y}, {box.right - 2.2, y}, stroked(palette::ink, 1)});
    }
    return {Group{std::move(items), {}, "", "inverter", "inverter"}};
}

Items solar_generator(const Axis& axis, const Style& pen) {
    const Box box = around_axis(axis);
    const Style thin = stroked(*pen.stroke, 1.3);
    Items items{Rect{box, over_paper(thin)}};
    items.emplace_back(Line{axis.point(0), axis.point(6), stroked(palette::ink, 1)});
    add_cell(axis, 6, 5, items);
    items.emplace_back(Line{axis.point(9.5), axis.point(machine_size), stroked(palette::ink, 1)});
    for (const double y : {box.top + 1, box.top + 6}) {
        append(items, Items{Line{{box.left - 9, y - 4}, {box.left - 4, y - 0.5}, thin}});
        items.emplace_back(
            Polygon{{{box.left - 1.5, y + 1.2}, {box.left - 5, y + 0.8}, {box.left - 3, y - 2.2}},
                    solid(pen)});
    }
    return {Group{std::move(items), {}, "", "solar-generator", "solar generator"}};
}

Items battery(const Axis& axis, const Style& pen) {
    const Style thin = stroked(*pen.stroke, 1.3);
    Items items{Line{axis.point(0), axis.point(4), thin}};
    add_cell(axis, 4, 7, items);
    items.emplace_back(Line{axis.point(7.5), axis.point(11), thin});
    add_cell(axis, 11, 7, items);
    return {Group{std::move(items), {}, "", "battery", "battery"}};
}

}  // namespace toft::symbol
