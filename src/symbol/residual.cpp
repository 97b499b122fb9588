#include "symbol/residual.h"

#include "symbol/contact.h"

namespace toft::symbol {

namespace {

constexpr double ring_at = 46;  // along the conductor

/// The letters I and delta, upright on the page, drawn as lines.
Items letters(Point centre) {
    const Style pen = stroked(palette::ink, 1.1);
    const double x = centre.x - 5;
    Items items{Line{{x, centre.y - 4}, {x, centre.y + 4}, pen}};
    for (const double y : {centre.y - 4, centre.y + 4}) {
        items.emplace_back(Line{{x - 2, y}, {x + 2, y}, pen});
    }
    items.emplace_back(
        Polygon{{{x + 4, centre.y + 4}, {x + 8, centre.y - 4}, {x + 12, centre.y + 4}}, pen});
    return items;
}

/// Ring, box and link; the link takes hold of the blade.
Items residual_part(const Axis& axis, const Style& pen) {
    const Style thin = stroked(*pen.stroke, 1.1);
    Items items{Line{axis.point(contact_length), axis.point(residual_length), pen}};
    constexpr double half = 6;
    items.emplace_back(PathBuilder(axis.point(ring_at, -half))
                           .arc(half, axis.point(ring_at, half), {true, false})
                           .arc(half, axis.point(ring_at, -half), {true, false})
                           .inked(thin));
    const Point box = axis.point(23, residual_reach - 10);
    const Point foot = axis.point(ring_at, residual_reach - 10);
    items.emplace_back(Polyline{{axis.point(ring_at, half), foot, box}, thin});
    items.emplace_back(Line{box, blade_middle(axis), dashed(*pen.stroke, 1, {3, 2})});
    items.emplace_back(Rect{{box.x - 10, box.y - 7, box.x + 10, box.y + 7}, over_paper(thin)});
    append(items, letters(box));
    return items;
}

}  // namespace

Items residual_switch(const Axis& axis, const Style& pen) {
    Items items = residual_part(axis, pen);
    append(items, switch_disconnector(axis, pen));
    return {Group{std::move(items), {}, "", "rcd", "residual current device"}};
}

Items residual_breaker(const Axis& axis, const Style& pen) {
    Items items = residual_part(axis, pen);
    append(items, circuit_breaker(axis, pen));
    return {Group{
        std::move(items), {}, "", "rcbo", "circuit breaker that opens on residual current too"}};
}

}  // namespace toft::symbol
