#include "drawing/label.h"

namespace toft::drawing {

namespace {

constexpr double dot_radius = 1.8;

}  // namespace

Text haloed(Text text, Colour under) {
    text.style.halo = under;
    return text;
}

Items leader(const Box& from, Point target, Colour colour) {
    Items items;
    const Point start = nearest(from, target);
    if (distance(start, target) > 2 * dot_radius) {
        items.push_back(Line{start, target, stroked(colour, weight::hair)});
    }
    items.push_back(Circle{target, dot_radius, filled(colour)});
    return items;
}

}  // namespace toft::drawing
