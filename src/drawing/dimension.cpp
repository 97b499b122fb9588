#include "drawing/dimension.h"

#include "drawing/measure.h"

namespace toft::drawing {

namespace {

constexpr double clear_of_thing = 3;  // where an extension line begins
constexpr double past_line = 4;       // how far it runs on beyond the dimension line
constexpr double tick_reach = 4.5;    // half an end stroke
constexpr double figure_lift = 3.5;   // of the figure's foot above the line

/// Degrees from -90 (upwards) to 90, without 90 itself, so that no figure stands on its head.
double reading_turn(Point along) {
    double degrees = std::atan2(along.y, along.x) * 180 / std::numbers::pi;
    if (degrees >= 90 - 1e-9) degrees -= 180;
    if (degrees < -90 - 1e-9) degrees += 180;
    return degrees;
}

Text figure_of(const Dimension& wanted, Point a, Point b) {
    TextStyle style{.size = wanted.size, .anchor = Anchor::middle, .turn = reading_turn(b - a)};
    style.colour = wanted.colour;
    style.halo = wanted.under;
    style.halo_width = 2;
    Point at = between(a, b, 0.5);
    const double wide = text_width(wanted.figure, wanted.size);
    const Point reading = turned({1, 0}, style.turn);
    if (wide + 2 * tick_reach > distance(a, b)) {
        const Point last = dot(b - a, reading) >= 0 ? b : a;
        at = last + reading * (2 * tick_reach + wide / 2);
    }
    at = at + turned({0, -figure_lift}, style.turn);
    return text(at, wanted.figure, style);
}

}  // namespace

Items dimension(const Dimension& wanted) {
    Items items;
    const Point along = unit(wanted.to - wanted.from);
    const Point out = quarter_turned(along) * -1;
    const double side = wanted.offset < 0 ? -1 : 1;
    const double reach = std::fabs(wanted.offset);
    const Point a = wanted.from + out * wanted.offset;
    const Point b = wanted.to + out * wanted.offset;
    if (wanted.from != wanted.to) {
        const Style hair = stroked(wanted.colour, weight::hair);
        const Style firm = stroked(wanted.colour, weight::firm);
        const Point tick = unit(along + out) * tick_reach;
        for (const Point foot : {wanted.from, wanted.to}) {
            if (reach > clear_of_thing) {
                items.push_back(Line{foot + out * (side * clear_of_thing),
                                     foot + out * (side * (reach + past_line)), hair});
            }
        }
        items.push_back(Line{a - along * past_line, b + along * past_line, hair});
        for (const Point end : {a, b}) items.push_back(Line{end - tick, end + tick, firm});
    }
    items.push_back(figure_of(wanted, a, b));
    return items;
}

}  // namespace toft::drawing
