#include "symbol/cable_end.h"

namespace toft::symbol {

namespace {

constexpr double end_half = 9;

std::vector<Point> triangle(const Axis& axis, double base, double tip) {
    return {axis.point(base, -end_half), axis.point(base, end_half), axis.point(tip)};
}

}  // namespace

Items gland(const Axis& axis, const Style& pen) {
    Items items{Polygon{triangle(axis, 0, gland_length), over_paper(pen)}};
    return {Group{std::move(items), {}, "", "gland", "cable gland"}};
}

Items joint_box(const Axis& axis, const Style& pen) {
    const double middle = joint_box_length / 2;
    Items items{Polygon{triangle(axis, middle - 2, 0), over_paper(pen)},
                Polygon{triangle(axis, middle + 2, joint_box_length), over_paper(pen)},
                Circle{axis.point(middle), 2.6, solid(pen)}};
    return {Group{std::move(items), {}, "", "joint-box", "joint box"}};
}

Items armour(const Axis& axis, double length) {
    Items items;
    for (const double side : {-armour_reach, armour_reach}) {
        items.emplace_back(
            Line{axis.point(0, side), axis.point(length, side), dashed(palette::ink, 1.3, {5, 3})});
    }
    return {Group{std::move(items), {}, "", "armour", "armour of the cable"}};
}

}  // namespace toft::symbol
