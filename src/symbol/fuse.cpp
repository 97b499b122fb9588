#include "symbol/fuse.h"

#include "symbol/contact.h"

namespace toft::symbol {

namespace {

Items link(const Axis& axis, const Style& pen, double length) {
    constexpr double half_long = 12;
    constexpr double half_wide = 5;
    const double middle = length / 2;
    const std::vector<Point> box{
        axis.point(middle - half_long, -half_wide), axis.point(middle - half_long, half_wide),
        axis.point(middle + half_long, half_wide), axis.point(middle + half_long, -half_wide)};
    Items items{Polygon{box, over_paper(pen)}, Line{axis.point(0), axis.point(length), pen}};
    return {Group{std::move(items), {}, "", "fuse", "fuse"}};
}

}  // namespace

Items fuse(const Axis& axis, const Style& pen) { return link(axis, pen, fuse_length); }

Items short_fuse(const Axis& axis, const Style& pen) { return link(axis, pen, short_fuse_length); }

Items switch_fuse(const Axis& axis, const Style& pen) {
    Items items = switch_disconnector(axis, pen);
    append(items, link(axis.moved(contact_length), pen, switch_fuse_length - contact_length));
    return {Group{std::move(items), {}, "", "switch-fuse", "switch-disconnector with fuse"}};
}

}  // namespace toft::symbol
