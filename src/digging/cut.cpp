#include "digging/cut.h"

#include "base/text.h"
#include "digging/ink.h"
#include "digging/measured.h"
#include "digging/things.h"
#include "drawing/dimension.h"
#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::digging {

namespace {

std::string mm_figure(Metres m) { return significant(std::round(1000 * m.number()), 6); }

class Cutter {
public:
    Cutter(const tables::Trench& tables, const trench::Trench& trench, Point zero, double one_to)
        : tables_(tables), t_(trench), s_(trench.section), zero_(zero), k_(units_a_metre(one_to)) {}

    Cut draw() {
        ground();
        fill();
        things();
        sizes();
        parts();
        out_.box = {left() - shown() - cut_left, top() - cut_above, right() + shown() + cut_right,
                    floor() + shown() + cut_below};
        return std::move(out_);
    }

private:
    double y(Metres down) const { return zero_.y + down.number() * k_; }
    double x(Metres across) const { return zero_.x + across.number() * k_; }
    double top() const { return zero_.y; }
    double floor() const { return y(s_.depth); }
    double right() const { return x(s_.width); }
    double left() const { return zero_.x; }
    double shown() const { return ground_shown * k_; }
    Box trench_box() const { return {left(), top(), right(), floor()}; }

    void put(const char* kind, Items items) {
        out_.items.emplace_back(Group{std::move(items), {}, "", kind, ""});
    }

    /// Undisturbed ground around, the surface over it.
    void ground() {
        const std::vector<Point> around{{left() - shown(), top()},
                                        {left(), top()},
                                        {left(), floor()},
                                        {right(), floor()},
                                        {right(), top()},
                                        {right() + shown(), top()},
                                        {right() + shown(), floor() + shown()},
                                        {left() - shown(), floor() + shown()}};
        Items items{Polygon{around, filled(palette::soil)}};
        append(items, hatched(around, Hatch{.angle = -45,
                                            .spacing = 6,
                                            .style = stroked(palette::earth, weight::hair)}));
        put("hatches", std::move(items));
        put("ground",
            {Line{{left() - shown(), top()},
                  {right() + shown(), top()},
                  stroked(palette::ink, weight::firm)},
             Polyline{{{left(), top()}, {left(), floor()}, {right(), floor()}, {right(), top()}},
                      stroked(palette::ink, weight::firm)}});
    }

    Items dots(const Box& box) const {
        Items items;
        constexpr double step = 9;
        int row = 0;
        for (double at = box.top + step / 2; at < box.bottom; at += step, ++row) {
            for (double over = box.left + step * (row % 2 == 0 ? 0.5 : 1.0); over < box.right - 1;
                 over += step) {
                items.emplace_back(Circle{{over, at}, 0.8, filled(palette::graphite)});
            }
        }
        return items;
    }

    void fill() {
        const Box sand{left(), y(s_.depth - s_.sand), right(), floor()};
        Items backfill;
        append(backfill, hatched(Box{left(), y(s_.made_good), right(), sand.top},
                                 Hatch{.angle = 45,
                                       .spacing = 16,
                                       .style = stroked(palette::faint, weight::hair)}));
        if (s_.made_good > metres(0)) {
            const Box layer{left(), top(), right(), y(s_.made_good)};
            backfill.emplace_back(Rect{layer, filled(palette::stone)});
            append(backfill,
                   hatched(layer, Hatch{.angle = 90,
                                        .spacing = 4,
                                        .style = stroked(palette::pencil, weight::hair)}));
            backfill.emplace_back(Line{{left(), layer.bottom},
                                       {right(), layer.bottom},
                                       stroked(palette::ink, weight::thin)});
        }
        append(backfill, dots(sand));
        put("hatches", std::move(backfill));
        put("ground", {Line{{left(), sand.top}, {right(), sand.top}, dashed(palette::ink, 0.8)}});
    }

    /// Half of all tapes side by side.
    double tape_half() const {
        return std::min(s_.tapes * tables_.sizes.tape_width.value.number(), s_.width.number()) *
               k_ / 2;
    }

    void things() {
        Items items;
        for (const trench::Placed& one : s_.placed) {
            append(items, lying_section(t_.lying[one.lying], {x(one.across), y(one.down)}, k_));
        }
        put("cables", std::move(items));
        const double middle = (left() + right()) / 2;
        put("tape", {Line{{middle - tape_half(), y(s_.tape)},
                          {middle + tape_half(), y(s_.tape)},
                          dashed(palette::ink, 3, {9, 3})}});
    }

    /// What is too short for its figure is told in words alone.
    void size(Point from, Point to, double offset, Metres figure) {
        constexpr double least = 24;
        if (distance(from, to) < least) return;
        put("dimensions", dimension({from, to, mm_figure(figure), offset, 10}));
    }

    /// From the trench outwards: sand, tape, cover, depth; width below. Words have the right side.
    void sizes() {
        const double l = left() - shown();
        const Metres sand_top = s_.depth - s_.sand;
        if (sand_top < s_.cover) {
            size({l, y(s_.cover)}, {l, y(sand_top)}, 16, s_.cover - sand_top);
        }
        size({l, floor()}, {l, y(s_.depth - s_.below)}, 16, s_.below);
        size({l, y(s_.cover)}, {l, y(s_.tape)}, 42, s_.cover - s_.tape);
        size({l, y(s_.cover)}, {l, top()}, 68, s_.cover);
        size({l, floor()}, {l, top()}, 94, s_.depth);
        size({left(), floor() + shown()}, {right(), floor() + shown()}, -20, s_.width);
    }

    void parts() {
        const double middle = (left() + right()) / 2;
        const tables::MadeGood& layer = trench::made_good(tables_, t_.surface);
        const std::string surface = t_.surface ? site::word(*t_.surface) : "surface not stated";
        out_.parts.push_back({{right() - 6, y(s_.made_good / 2)}, surface, layer.says});
        out_.parts.push_back({{middle + tape_half() - 4, y(s_.tape)},
                              s_.tapes == 1 ? "warning tape" : "warning tapes, side by side",
                              fmt::format("{} mm over the cable", mm_figure(s_.cover - s_.tape))});
        const Metres fill_middle = (s_.tape + s_.depth - s_.sand) / 2;
        out_.parts.push_back({{right() - 10, y(fill_middle)},
                              "soil put back",
                              "without stones, in layers, each trodden down"});
        for (const trench::Placed& one : s_.placed) {
            const trench::Lying& thing = t_.lying[one.lying];
            out_.parts.push_back({{x(one.across), y(one.down)},
                                  thing.sign + ": " + thing.says,
                                  fmt::format("{} mm across{}", mm_figure(thing.across),
                                              thing.there ? "; there today" : "")});
        }
        if (t_.lying.empty()) {
            out_.parts.push_back(
                {{middle, y(s_.cover)}, "cable", "not settled: its size is not known"});
        }
        out_.parts.push_back(
            {{right() - 8, floor() - s_.below.number() * k_ / 2},
             "sand, soft and washed",
             fmt::format("{} mm under, to {} mm over the cable", mm_figure(s_.below),
                         mm_figure(s_.cover - (s_.depth - s_.sand)))});
    }

    const tables::Trench& tables_;
    const trench::Trench& t_;
    const trench::Section& s_;
    const Point zero_;
    const double k_;
    Cut out_;
};

}  // namespace

Cut cut(const tables::Trench& tables, const trench::Trench& trench, Point zero, double one_to) {
    return Cutter(tables, trench, zero, one_to).draw();
}

}  // namespace toft::digging
