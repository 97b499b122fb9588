#include "board/bus.h"

#include "board/ink.h"
#include "board/wires.h"

#include <algorithm>

namespace toft::board {

namespace {

constexpr double first_bar = 9;  // below the devices
constexpr double bar_step = 8;
constexpr double lane_step = 4.5;
constexpr double letters_below = 13;  // the last bar, their baseline

}  // namespace

Bus::Bus(int phases, double top, const std::vector<Point>* fed_from)
    : phases_(phases), top_(top), fed_from_(fed_from ? *fed_from : std::vector<Point>{}) {}

double Bus::bar_at(int line) const { return top_ + first_bar + bar_step * line; }

void Bus::drop(int line, double x) {
    drops_.push_back({line, x});
    if (phases_ == 3) letters_.push_back({"L" + std::to_string(line + 1), x});
}

void Bus::letter(const std::string& word, double x) { letters_.push_back({word, x}); }

Items Bus::drawn(double lanes, bool on, std::vector<Point>& feet) const {
    Items items;
    std::vector<Point> ends;
    for (int line = 0; line < phases_; ++line) {
        const double y = bar_at(line);
        double left = 1e9;
        double right = -1e9;
        for (const auto& [fed, x] : drops_) {
            if (fed != line) continue;
            left = std::min(left, x);
            right = std::max(right, x);
        }
        // A lane that feeds nothing here or below ends on the rail above.
        if (right < left && !on) continue;
        if (lanes > 0) {
            right = lanes - lane_step * line;
            left = std::min(left, right);
            ends.push_back({right, y});
        }
        const auto k = static_cast<std::size_t>(line);
        std::vector<Point> points{{left, y}, {right, y}};
        if (k < fed_from_.size()) points.push_back(fed_from_[k]);
        if (right >= left) append(items, line_wire(points, line));
        for (const auto& [fed, x] : drops_) {
            if (fed == line) append(items, line_wire({{x, top_}, {x, y}}, line));
        }
    }
    feet = std::move(ends);
    return items;
}

Items Bus::letters() const {
    const TextStyle style{.size = 9.5, .anchor = Anchor::middle};
    Items items;
    for (const auto& [word, x] : letters_) {
        items.emplace_back(text({x, bar_at(phases_ - 1) + letters_below}, word, style));
    }
    return items;
}

double Bus::foot() const { return bar_at(phases_ - 1) + letters_below + 5; }

}  // namespace toft::board
