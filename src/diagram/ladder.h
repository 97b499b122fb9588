#pragma once
// The diagram in the making: rows from the supply down, each as high as its words and its symbol
// ask, so that nothing can cover anything however long the names are.

#include "diagram/columns.h"
#include "diagram/ink.h"
#include "diagram/note.h"

#include <functional>

namespace toft::diagram {

struct Row {
    double top = 0;
    double foot = 0;
    double middle() const { return (top + foot) / 2; }
};

/// Draws a symbol that begins at the axis.
using DrawSymbol = std::function<drawing::Items(const symbol::Axis&, const drawing::Style&)>;

class Ladder {
public:
    Ladder(const Columns& columns, double top) : columns_(columns), y_(top) {}

    const Columns& columns() const { return columns_; }
    double y() const { return y_; }

    /// Sets the note and moves down past it, by `least` at least.
    Row row(const Note& note, double least);

    /// A row whose symbol of that length stands on the live line, with the line above and below.
    Row device(const Note& note, double length, const DrawSymbol& draw);

    /// The pen of what is drawn from now on, and of the live line.
    void use(const drawing::Style& pen) { pen_ = pen; }
    const drawing::Style& pen() const { return pen_; }

    /// The live line from `top` to `foot`.
    void live(double top, double foot);

    /// A protective conductor through those points.
    void protective(const std::vector<drawing::Point>& points);

    /// Remembers where the protective conductor in its column goes on from; `earth_to` draws it.
    void earth_from(double y) { earth_ = y; }
    void earth_to(double y);

    drawing::Point on_live(double y) const { return {columns_.live, y}; }
    drawing::Point on_earth(double y) const { return {columns_.earth, y}; }

    void draw(drawing::Items items) { drawing::append(items_, std::move(items)); }
    /// Draws beneath all that is there.
    void draw_behind(drawing::Items items);
    void skip(double by) { y_ += by; }

    drawing::Items take() { return std::move(items_); }

private:
    Columns columns_;
    double y_ = 0;
    double earth_ = 0;
    drawing::Style pen_ = symbol::pen_existing();
    drawing::Items items_;
};

}  // namespace toft::diagram
