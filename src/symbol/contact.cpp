#include "symbol/contact.h"

namespace toft::symbol {

namespace {

constexpr double fixed_contact = 10;
constexpr double hinge = 31;
constexpr double ring = 2.8;

Point blade_tip(const Axis& axis) { return axis.point(fixed_contact + 1.5, -9.5); }

/// Leads and blade.
Items blade(const Axis& axis, const Style& pen) {
    return {Line{axis.point(0), axis.point(fixed_contact), pen},
            Line{axis.point(hinge), blade_tip(axis), pen},
            Line{axis.point(hinge), axis.point(contact_length), pen}};
}

}  // namespace

Point blade_middle(const Axis& axis) { return between(axis.point(hinge), blade_tip(axis), 0.5); }

Items switch_disconnector(const Axis& axis, const Style& pen) {
    Items items = blade(axis, pen);
    items.emplace_back(Line{axis.point(fixed_contact, -6), axis.point(fixed_contact, 6), pen});
    items.emplace_back(Circle{axis.point(fixed_contact + ring), ring, over_paper(pen)});
    return {Group{std::move(items), {}, "", "switch-disconnector", "switch-disconnector"}};
}

Items circuit_breaker(const Axis& axis, const Style& pen) {
    Items items = blade(axis, pen);
    for (const double side : {-5.0, 5.0}) {
        items.emplace_back(
            Line{axis.point(fixed_contact - 5, side), axis.point(fixed_contact + 5, -side), pen});
    }
    return {Group{std::move(items), {}, "", "circuit-breaker", "circuit breaker"}};
}

}  // namespace toft::symbol
