#include "symbol/board.h"

namespace toft::symbol {

Items enclosure(const Box& box) {
    return {Group{
        {Rect{box, dashed(palette::graphite, 0.9, {9, 3, 1.5, 3})}}, {}, "", "enclosure", ""}};
}

Items joint(Point at, const Style& pen) { return {Circle{at, 3, solid(pen)}}; }

Items busbar(Point from, Point to) {
    return {Group{{Line{from, to, stroked(palette::ink, 4)}}, {}, "", "busbar", "busbar"}};
}

Items onward(Point from, Point to, const Style& pen) {
    const Point way = unit(to - from);
    const Point side = quarter_turned(way) * 3.5;
    const Point neck = to - way * 9;
    return {Line{from, neck, pen}, Polygon{{neck + side, to, neck - side}, solid(pen)}};
}

}  // namespace toft::symbol
