#pragma once
// A drawing as a value: its size, its name and description, and what is on it from back to front.

#include "drawing/geometry.h"
#include "drawing/path.h"
#include "drawing/style.h"
#include "drawing/text_style.h"

#include <iterator>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace toft::drawing {

/// One user unit is one CSS pixel: 1/96 inch on paper.
inline constexpr double mm_per_unit = 25.4 / 96;
constexpr double units_of_mm(double mm) { return mm / mm_per_unit; }
constexpr double mm_of_units(double units) { return units * mm_per_unit; }

struct Line {
    Point from = {};
    Point to = {};
    Style style = {};
};

struct Polyline {
    std::vector<Point> points = {};
    Style style = {};
};

/// Closed from the last point to the first.
struct Polygon {
    std::vector<Point> points = {};
    Style style = {};
};

struct Rect {
    Box box = {};
    Style style = {};
    double corner = 0;  ///< radius of the corners
};

struct Circle {
    Point centre = {};
    double radius = 0;
    Style style = {};
};

struct Item;

/// Items moved together and spoken of together.
struct Group {
    std::vector<Item> items;
    Point shift = {};        ///< added to every coordinate inside
    std::string id = {};     ///< unique in the page, or empty
    std::string kind = {};   ///< class names, or empty
    std::string title = {};  ///< what it is, for a reader who cannot see it; may be empty
};

using Shape = std::variant<Line, Polyline, Polygon, Rect, Circle, Path, Text, Group>;

/// Any shape; made from one without saying so.
struct Item {
    Shape shape;

    template <class T, class = std::enable_if_t<std::is_constructible_v<Shape, T&&> &&
                                                !std::is_same_v<std::decay_t<T>, Item>>>
    Item(T&& one) : shape(std::forward<T>(one)) {}
};

using Items = std::vector<Item>;

/// Adds `more` in front of what `items` hold.
inline void append(Items& items, Items more) {
    items.insert(items.end(), std::make_move_iterator(more.begin()),
                 std::make_move_iterator(more.end()));
}

struct Scene {
    double width = 0;   ///< user units
    double height = 0;  ///< user units
    std::string title = {};
    std::string description = {};
    std::optional<Colour> paper = palette::paper;  ///< laid under everything; none for clear
    Items items = {};
};

}  // namespace toft::drawing
