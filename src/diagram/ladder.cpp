#include "diagram/ladder.h"

#include "parts/fittings.h"

#include <algorithm>

namespace toft::diagram {

namespace {

constexpr double between_rows = 7;

}  // namespace

Row Ladder::row(const Note& note, double least) {
    const Row row{y_, 0};
    SetNote set = set_note(note, columns_, y_);
    draw(std::move(set.items));
    y_ = std::max(set.foot + between_rows, y_ + least);
    return {row.top, y_};
}

Row Ladder::device(const Note& note, double length, const DrawSymbol& symbol) {
    constexpr double lead = 3;
    const Row at = row(note, length + 2 * lead);
    const double start = at.top + lead;
    live(at.top, start);
    draw(symbol({{columns_.live, start}, {0, 1}}, pen_));
    live(start + length, at.foot);
    return at;
}

void Ladder::live(double top, double foot) {
    if (foot > top) items_.emplace_back(Line{on_live(top), on_live(foot), pen_});
}

void Ladder::protective(const std::vector<Point>& points) {
    items_.emplace_back(
        Group{parts::protective_line(points), {}, "", "protective", "protective conductor"});
}

void Ladder::earth_to(double y) {
    if (y > earth_) protective({on_earth(earth_), on_earth(y)});
    earth_ = y;
}

void Ladder::draw_behind(Items items) {
    append(items, std::move(items_));
    items_ = std::move(items);
}

}  // namespace toft::diagram
