#include "board/wires.h"

#include "board/ink.h"
#include "drawing/banded.h"
#include "drawing/conductor_colours.h"
#include "parts/fittings.h"

#include <algorithm>
#include <string>

namespace toft::board {

namespace {

constexpr double wire_wide = 2.2;
constexpr double screw_step = 8;
constexpr double strip_high = 10;

}  // namespace

Colour line_colour(int line) {
    if (line == 1) return conductor::black;
    return line == 2 ? conductor::grey : conductor::brown;
}

Items line_wire(const std::vector<Point>& points, int line) {
    return {Group{cased(points, line_colour(line), wire_wide), {}, "", "line-wire", ""}};
}

Items neutral_wire(const std::vector<Point>& points) {
    return {Group{cased(points, conductor::blue, wire_wide), {}, "", "neutral-wire", ""}};
}

Items earth_wire(const std::vector<Point>& points) {
    return {Group{protective_line(points), {}, "", "protective", "protective conductor"}};
}

Strip terminal_strip(int screws, double left, double right, double top) {
    Strip strip{{}, top};
    const int fit = std::max(2, static_cast<int>((right - left - 6) / screw_step));
    for (int rest = std::max(2, screws); rest > 0; rest -= fit) {
        const double wide = 6 + screw_step * std::max(2, std::min(rest, fit));
        append(strip.items, terminal_bar({left, strip.foot, left + wide, strip.foot + strip_high}));
        strip.foot += strip_high + 3;
    }
    return strip;
}

Items numbered_ring(int number, Point centre) {
    Style ring = stroked(palette::ink, 1.2);
    ring.fill = palette::paper;
    const std::string words = number > 0 ? std::to_string(number) : "all";
    const TextStyle style{
        .size = number > 0 ? 10.0 : 8.0, .weight = Weight::bold, .anchor = Anchor::middle};
    return {Group{{Circle{centre, ring_radius, ring},
                   text(centre + Point{0, 0.36 * style.size}, words, style)},
                  {},
                  "",
                  "way-number",
                  ""}};
}

}  // namespace toft::board
