#include "digging/labels.h"

#include "digging/ink.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace toft::digging {

namespace {

/// True where the line from `a` to `b` has some part inside the box.
bool through(Point a, Point b, const Box& box) {
    double from = 0;
    double to = 1;
    const auto cut = [&](double start, double step, double low, double high) {
        if (std::fabs(step) < 1e-12) return start > low && start < high;
        const double one = (low - start) / step;
        const double other = (high - start) / step;
        from = std::max(from, std::min(one, other));
        to = std::min(to, std::max(one, other));
        return from < to;
    };
    return cut(a.x, b.x - a.x, box.left, box.right) && cut(a.y, b.y - a.y, box.top, box.bottom);
}

/// Where words stand, and the line from them to what they tell of.
struct Set {
    Box box;
    Point from, to;
};

Set set_at(const Box& box, Point target) {
    const double x = target.x <= box.centre().x ? box.left : box.right;
    return {box, {x, std::clamp(target.y, box.top, box.bottom)}, target};
}

class Setter {
public:
    Setter(Room room, std::vector<Box> solid) : room_(std::move(room)), solid_(std::move(solid)) {}

    /// Words and their line; none where there is no room for the words.
    std::optional<Items> place(Label label) {
        const Box box = callout_box(label.callout);
        std::optional<Set> best = clear_place(label, box);
        if (!best) best = any_place(label, box);
        if (!best) return std::nullopt;
        set_.push_back(*best);
        room_.taken.push_back(best->box);
        label.callout.target = best->to;
        return callout_at(label.callout, best->box);
    }

private:
    bool is_free(const Box& box) const {
        if (!contains(room_.frame, box)) return false;
        const Box wide = grown(box, room_.gap);
        return std::none_of(room_.taken.begin(), room_.taken.end(),
                            [&](const Box& other) { return overlap(wide, other); });
    }

    /// No line through words, neither this one nor one that is there.
    bool lines_clear(const Set& one) const {
        const bool words = std::any_of(set_.begin(), set_.end(), [&](const Set& other) {
            return through(one.from, one.to, other.box) || through(other.from, other.to, one.box);
        });
        return !words && std::none_of(solid_.begin(), solid_.end(), [&](const Box& box) {
            return through(one.from, one.to, box);
        });
    }

    std::optional<Set> clear_place(const Label& label, const Box& box) const {
        for (const double times : {1.0, 2.0, 3.0, 5.0}) {
            for (const Point target : label.targets) {
                const double reach = times * label.callout.reach;
                for (const Box& there : around(target, box.width(), box.height(), reach)) {
                    const Set one = set_at(there, target);
                    if (is_free(there) && lines_clear(one)) return one;
                }
            }
        }
        return std::nullopt;
    }

    std::optional<Set> any_place(const Label& label, const Box& box) const {
        const Point target = label.targets.front();
        const double reach = label.callout.reach;
        const Place found =
            placed({{around(target, box.width(), box.height(), reach)}}, room_).front();
        if (!found.free) return std::nullopt;
        const Set one = set_at(found.box, target);
        return lines_clear(one) ? std::optional<Set>(one) : std::nullopt;
    }

    Room room_;
    std::vector<Box> solid_;
    std::vector<Set> set_;
};

}  // namespace

Labels labelled(const std::vector<Label>& labels, const Room& room, const std::vector<Box>& solid) {
    Labels done;
    Setter setter(room, solid);
    std::vector<Label> behind;
    const auto place = [&](const Label& label) {
        std::optional<Items> words = setter.place(label);
        if (words) append(done.items, std::move(*words));
        return words.has_value();
    };
    for (const Label& label : labels) {
        if (label.targets.empty()) {
            ++done.left_out;
        } else if (!place(label)) {
            behind.push_back(label);
        }
    }
    for (Label& label : behind) {
        label.callout.lines.resize(1);
        if (!place(label)) ++done.left_out;
    }
    return done;
}

std::vector<Box> boxes_along(Point from, Point to, double half) {
    constexpr double piece = 12;
    std::vector<Box> boxes;
    const int pieces = std::min(400, 1 + static_cast<int>(distance(from, to) / piece));
    for (int i = 0; i < pieces; ++i) {
        const Point a = between(from, to, static_cast<double>(i) / pieces);
        const Point b = between(from, to, static_cast<double>(i + 1) / pieces);
        boxes.push_back(grown(joined(joined(Box{}, a), b), half));
    }
    return boxes;
}

}  // namespace toft::digging
