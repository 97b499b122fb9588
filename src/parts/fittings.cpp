#include "parts/fittings.h"

#include "drawing/banded.h"
#include "drawing/conductor_colours.h"
#include "parts/ink.h"

#include <algorithm>

namespace toft::parts {

Items protective_line(const std::vector<Point>& points, double width) {
    return banded(points, conductor::yellow, conductor::green, width);
}

Items armoured_line(const std::vector<Point>& points, double width) {
    Items items;
    items.emplace_back(Polyline{points, stroked(palette::ink, width)});
    items.emplace_back(Polyline{points, dashed(palette::paper, width / 3, {5, 3})});
    return items;
}

Items sheathed_line(const std::vector<Point>& points, double width) {
    return {Polyline{points, stroked(palette::ink, width)}};
}

Items flat_line(const std::vector<Point>& points, double width) {
    return {Polyline{points, stroked(palette::ink, width)},
            Polyline{points, stroked(palette::faint, width - 2.6)}};
}

Items joint_box(Point centre) {
    Style box = stroked(palette::ink, weight::firm);
    box.fill = palette::paper;
    const Box outer = grown({centre.x, centre.y, centre.x, centre.y}, 10);
    return {Rect{outer, box, 2}, Circle{centre, 3.4, filled(palette::ink)}};
}

int Board::poles_of(int way) const {
    const auto i = static_cast<std::size_t>(way);
    return i < poles.size() ? poles[i] : 1;
}

namespace {

Box way_box(const Board& board, int way) {
    int places = board.main_switch ? 2 : 0;
    int before = places;
    for (int i = 0; i < board.ways; ++i) {
        if (i < way) before += board.poles_of(i);
        places += board.poles_of(i);
    }
    const double wide = (board.box.width() - 8) / std::max(1, places);
    const double left = board.box.left + 4 + wide * before;
    const double middle = board.box.centre().y;
    return {left + 0.8, middle - 11, left + wide * board.poles_of(way) - 0.8, middle + 11};
}

/// The two places before the ways.
Box switch_box(const Board& board) {
    const Box first = way_box(board, 0);
    return {board.box.left + 4.8, first.top, first.left - 1.6, first.bottom};
}

/// A device of one pole, or several whose toggles are linked.
Items breaker(const Box& box, bool chosen, int poles) {
    Items items;
    Style style = stroked(chosen ? palette::accent : palette::ink, chosen ? 2 : 0.8);
    style.fill = chosen ? palette::blush : palette::paper;
    items.emplace_back(Rect{box, style});
    const double y = box.centre().y;
    const double step = box.width() / poles;
    for (int i = 0; i < poles; ++i) {
        const double x = box.left + (i + 0.5) * step;
        items.emplace_back(Line{{x, y - 5}, {x, y + 1}, stroked(palette::ink, 1.8)});
    }
    if (poles > 1) {
        items.emplace_back(Line{{box.left + 0.5 * step, y - 4},
                                {box.right - 0.5 * step, y - 4},
                                stroked(palette::ink, 1.4)});
    }
    return items;
}

}  // namespace

Point way_centre(const Board& board, int way) { return way_box(board, way).centre(); }

Items board_items(const Board& board) {
    Items items;
    Style shell = stroked(palette::ink, weight::firm);
    shell.fill = palette::wash;
    items.emplace_back(Rect{board.box, shell, 2});
    if (board.main_switch) {
        const Box box = switch_box(board);
        items.emplace_back(Rect{box, filled(palette::graphite)});
        const Point c = box.centre();
        items.emplace_back(
            Line{{box.left + 2.5, c.y}, {box.right - 2.5, c.y}, stroked(palette::paper, 1.6)});
    }
    for (int way = 0; way < board.ways; ++way) {
        append(items, breaker(way_box(board, way), way == board.chosen, board.poles_of(way)));
    }
    if (board.residual && board.chosen >= 0) {
        const Point button = way_centre(board, board.chosen) + Point{0, 6};
        items.emplace_back(Circle{button, 2, stroked(palette::ink, 1)});
    }
    return items;
}

Items terminal_bar(const Box& box) {
    Items items;
    Style style = stroked(palette::ink, weight::thin);
    style.fill = palette::stone;
    items.emplace_back(Rect{box, style, 1});
    const bool lying = box.width() > box.height();
    const double size = lying ? box.width() : box.height();
    for (double along = 6; along < size - 3; along += 8) {
        const Point c = lying ? Point{box.left + along, box.centre().y}
                              : Point{box.centre().x, box.top + along};
        items.emplace_back(Circle{c, 1.5, filled(palette::ink)});
    }
    return items;
}

Items rod(Point top, double length) {
    Items items;
    Style body = stroked(palette::ink, weight::thin);
    body.fill = palette::wash;
    const Box whole = box_at(top - Point{2.5, 0}, 5, length - 12);
    items.emplace_back(Rect{whole, body});
    items.emplace_back(Polygon{
        {{whole.left, whole.bottom}, {whole.right, whole.bottom}, {top.x, top.y + length}}, body});
    const double y = top.y + 0.55 * length;
    const std::vector<Point> gap{
        {top.x - 7, y - 5}, {top.x + 7, y - 9}, {top.x + 7, y - 2}, {top.x - 7, y + 2}};
    items.emplace_back(Polygon{gap, filled(palette::soil)});
    items.emplace_back(Line{gap[0], gap[1], stroked(palette::ink, 0.8)});
    items.emplace_back(Line{gap[3], gap[2], stroked(palette::ink, 0.8)});
    return items;
}

Items pipe(const std::vector<Point>& points, double width) {
    Items items;
    items.emplace_back(Polyline{points, stroked(palette::graphite, width)});
    items.emplace_back(Polyline{points, stroked(palette::paper, width - 2.4)});
    return items;
}

Items break_mark(Point at, double height, Colour under) {
    Items items;
    const double h = height / 2;
    const auto zigzag = [&](double x) {
        return std::vector<Point>{{x + 2, at.y - h},       {x + 2, at.y - 0.3 * h},
                                  {x - 4, at.y - 0.1 * h}, {x + 8, at.y + 0.1 * h},
                                  {x + 2, at.y + 0.3 * h}, {x + 2, at.y + h}};
    };
    std::vector<Point> area = zigzag(at.x - 8);
    std::vector<Point> back = zigzag(at.x + 4);
    area.insert(area.end(), back.rbegin(), back.rend());
    items.emplace_back(Polygon{area, filled(under)});
    items.emplace_back(Polyline{zigzag(at.x - 8), stroked(palette::ink, weight::thin)});
    items.emplace_back(Polyline{zigzag(at.x + 4), stroked(palette::ink, weight::thin)});
    return items;
}

}  // namespace toft::parts
