#include "drawing/placement.h"

#include <cstddef>
#include <numeric>
#include <optional>

namespace toft::drawing {

namespace {

bool is_free(const Box& box, const Box& frame, const std::vector<Box>& kept_clear) {
    if (!contains(frame, box)) return false;
    return std::none_of(kept_clear.begin(), kept_clear.end(),
                        [&](const Box& other) { return overlap(box, other); });
}

/// The free box nearest to `wish`. The places a box may not take are, for its corner, rectangles
/// along the axes; so the nearest free corner has each coordinate from the wish or from an edge.
std::optional<Box> nearest_free(const Box& wish, const Box& frame,
                                const std::vector<Box>& kept_clear) {
    const double wide = wish.width();
    const double high = wish.height();
    std::vector<double> xs = {wish.left, frame.left, frame.right - wide};
    std::vector<double> ys = {wish.top, frame.top, frame.bottom - high};
    for (const Box& other : kept_clear) {
        xs.insert(xs.end(), {other.right, other.left - wide});
        ys.insert(ys.end(), {other.bottom, other.top - high});
    }
    std::optional<Box> best;
    double best_distance = std::numeric_limits<double>::infinity();
    for (const double y : ys) {
        for (const double x : xs) {
            const double away = std::hypot(x - wish.left, y - wish.top);
            if (away >= best_distance) continue;
            const Box box = box_at({x, y}, wide, high);
            if (!is_free(box, frame, kept_clear)) continue;
            best = box;
            best_distance = away;
        }
    }
    return best;
}

Place place_one(const Wish& wish, const Box& frame, const std::vector<Box>& kept_clear) {
    if (wish.preferred.empty()) return {Box{}, false};
    for (const Box& box : wish.preferred) {
        if (is_free(box, frame, kept_clear)) return {box, true};
    }
    std::optional<Box> best;
    double best_distance = std::numeric_limits<double>::infinity();
    for (const Box& box : wish.preferred) {
        const std::optional<Box> found = nearest_free(box, frame, kept_clear);
        if (!found) continue;
        const double away = std::hypot(found->left - box.left, found->top - box.top);
        if (away >= best_distance) continue;
        best = found;
        best_distance = away;
    }
    return best ? Place{*best, true} : Place{wish.preferred.front(), false};
}

std::vector<Place> placed_in_order(const std::vector<Wish>& wishes, const Room& room,
                                   const std::vector<std::size_t>& order) {
    std::vector<Box> kept_clear;
    for (const Box& box : room.taken) kept_clear.push_back(grown(box, room.gap));
    std::vector<Place> places(wishes.size());
    for (const std::size_t i : order) {
        places[i] = place_one(wishes[i], room.frame, kept_clear);
        if (places[i].free) kept_clear.push_back(grown(places[i].box, room.gap));
    }
    return places;
}

long without_room(const std::vector<Place>& places) {
    return std::count_if(places.begin(), places.end(), [](const Place& p) { return !p.free; });
}

double area(const Wish& wish) {
    return wish.preferred.empty()
               ? 0
               : wish.preferred.front().width() * wish.preferred.front().height();
}

}  // namespace

std::vector<Place> placed(const std::vector<Wish>& wishes, const Room& room) {
    std::vector<std::size_t> order(wishes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::vector<Place> places = placed_in_order(wishes, room, order);
    if (without_room(places) == 0) return places;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return area(wishes[a]) > area(wishes[b]);
    });
    std::vector<Place> larger_first = placed_in_order(wishes, room, order);
    return without_room(larger_first) < without_room(places) ? larger_first : places;
}

std::vector<Box> around(Point target, double width, double height, double reach) {
    const double right = target.x + reach;
    const double left = target.x - reach - width;
    const double above = target.y - reach - height;
    const double below = target.y + reach;
    const Point middle = target - Point{width / 2, height / 2};
    std::vector<Box> boxes;
    for (const Point corner : {Point{right, above}, Point{left, above}, Point{right, below},
                               Point{left, below}, Point{right, middle.y}, Point{left, middle.y},
                               Point{middle.x, above}, Point{middle.x, below}}) {
        boxes.push_back(box_at(corner, width, height));
    }
    return boxes;
}

}  // namespace toft::drawing
