#include "terrain/rod_plot.h"

#include "drawing/label.h"
#include "drawing/measure.h"
#include "drawing/placement.h"
#include "parts/words.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"
#include "terrain/soil_column.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr double depth_wide = 34;  // of the depths' figures
constexpr double target_row = 15;  // between the words of targets above the paper
const std::vector<double> target_dash = {9, 3, 2, 3};

/// What the placing of words goes by.
struct Plot {
    const RodPlotOf& of;
    Paper paper;
    std::vector<answer::RodPointAnswer> points;
    std::vector<MarkedChoice> marked;
    Items items = {};
    std::vector<Box> taken = {};   ///< by signs and words
    std::vector<Box> filled = {};  ///< by the band
    Items named = {};              ///< words that are drawn last, over lines

    std::vector<Box> clear_of() const {
        std::vector<Box> all = taken;
        all.insert(all.end(), filled.begin(), filled.end());
        return all;
    }
};

double deepest(const Plot& plot) {
    double most = plot.of.rod_m.value_or(0);
    for (const auto& p : plot.points) most = std::max(most, p.length_m);
    for (const MarkedChoice& m : plot.marked) most = std::max(most, m.choice.length_m);
    return most * 1.04;
}

bool above_nothing(double ohms) { return std::isfinite(ohms) && ohms > 0; }

Scale ohm_scale(const Plot& plot) {
    double low = plot.points.front().low_ohm;
    double high = low;
    const auto take = [&](double ohms) {
        if (!above_nothing(ohms)) return;
        low = std::min(low, ohms);
        high = std::max(high, ohms);
    };
    for (const auto& p : plot.points) {
        take(p.low_ohm);
        take(p.high_ohm);
    }
    for (const auto& t : plot.of.side.targets) take(t.target_ohm);
    take(plot.of.side.year.low_ohm);
    take(plot.of.side.year.high_ohm);
    take(plot.of.side.read_ohm.value_or(low));
    Scale scale{rounded_down(0.85 * low), rounded_up(1.1 * high), 0, 1, true};
    if (scale.high <= scale.low * 2) {
        scale.low /= 2;
        scale.high *= 2;
    }
    return scale;
}

/// The targets' numbers, the smallest target first; what cannot be drawn is left out.
std::vector<std::size_t> targets_in_order(const answer::GroundSideAnswer& side) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < side.targets.size(); ++i) {
        if (above_nothing(side.targets[i].target_ohm)) order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return side.targets[a].target_ohm < side.targets[b].target_ohm;
    });
    return order;
}

void ruling(Plot& plot) {
    std::vector<Step> across;
    for (const double ohms : decade_steps(plot.paper.across)) {
        across.push_back({ohms, figure_words(ohms) + " Ω"});
    }
    std::vector<Step> down;
    for (const double metres : even_steps(plot.paper.down, 9)) {
        if (metres > 0) down.push_back({metres, ""});
    }
    append(plot.items, ruled(plot.paper, across, down));
}

void depths(Plot& plot, double left) {
    TextStyle style{.size = plot.paper.letters - 1, .anchor = Anchor::end};
    style.colour = palette::graphite;
    for (const double metres : even_steps(plot.paper.down, 9)) {
        const Point at{left + depth_wide - 5, plot.paper.down.at(metres) + 3.8};
        plot.items.emplace_back(text(at, metre_words(metres), style));
    }
}

void layers(Plot& plot) {
    for (const double end : layer_ends(plot.of.soil)) {
        if (!plot.paper.down.holds(end)) continue;
        const double y = plot.paper.down.at(end);
        plot.items.emplace_back(Line{{plot.paper.box.left, y},
                                     {plot.paper.box.right, y},
                                     dashed(palette::earth, 1.2, {1, 3})});
    }
}

void year_band(Plot& plot) {
    std::vector<Point> low, high;
    for (const auto& p : plot.points) {
        low.push_back(plot.paper.at(p.low_ohm, p.length_m));
        high.push_back(plot.paper.at(p.high_ohm, p.length_m));
    }
    append(plot.items, band(low, high, {stroked(palette::ink, 1.6), {.angle = -45, .spacing = 7}}));
    plot.items.emplace_back(Polyline{high, stroked(palette::ink, weight::heavy)});
    for (std::size_t i = 0; i < low.size(); ++i) {
        const double next = i + 1 < low.size() ? low[i + 1].y : low[i].y + 2;
        plot.filled.push_back({low[i].x - 2, low[i].y, high[i].x + 2, next});
    }
}

/// Upright lines with their words above the paper: the smallest stands highest, so that no line
/// crosses another's words.
void targets(Plot& plot, double right) {
    const auto order = targets_in_order(plot.of.side);
    double rise = target_row * static_cast<double>(order.size());
    for (const std::size_t i : order) {
        const answer::RodTargetAnswer& target = plot.of.side.targets[i];
        const double x = plot.paper.across.at(target.target_ohm);
        const double top = plot.paper.box.top - rise;
        plot.items.emplace_back(
            Line{{x, plot.paper.box.bottom}, {x, top}, dashed(palette::accent, 1.6, target_dash)});
        const std::string ohms = figure_words(target.target_ohm) + " Ω";
        TextStyle style{.size = plot.paper.letters, .weight = Weight::bold};
        const double wide = text_width(ohms, style.size, style.weight);
        const bool left = x + 4 + wide > right;
        style.anchor = left ? Anchor::end : Anchor::start;
        style.halo = palette::paper;
        plot.items.emplace_back(text({x + (left ? -4 : 4), top + 9}, ohms, style));
        const double room = right - x - 4 - wide - 6;
        if (!left && room > 70 && !target.why.empty()) {
            const TextStyle why{.size = plot.paper.letters};
            plot.items.emplace_back(text({x + 4 + wide + 6, top + 9},
                                         parts::shortened(target.why, room, why.size), why));
        }
        rise -= target_row;
    }
}

void electrode(Plot& plot) {
    const answer::YearAnswer& year = plot.of.side.year;
    if (!plot.of.rod_m || !above_nothing(year.low_ohm) || !above_nothing(year.high_ohm)) return;
    const Point low = plot.paper.at(year.low_ohm, *plot.of.rod_m);
    const Point high = plot.paper.at(year.high_ohm, *plot.of.rod_m);
    plot.items.emplace_back(Group{span_mark(low, high, 2.4), {}, "", "electrode", "the electrode"});
    plot.taken.push_back(grown(joined(Box{low.x, low.y, low.x, low.y}, high), 6));
    if (plot.of.side.read_ohm && above_nothing(*plot.of.side.read_ohm)) {
        const Point at = plot.paper.at(*plot.of.side.read_ohm, *plot.of.rod_m);
        const Style pen = stroked(palette::accent, 2.4);
        Items cross{Line{at + Point{-5, -5}, at + Point{5, 5}, pen},
                    Line{at + Point{-5, 5}, at + Point{5, -5}, pen}};
        plot.items.emplace_back(Group{std::move(cross), {}, "", "read", "as it was read"});
    }
    if (plot.of.side.electrode_words.empty()) return;
    const TextStyle style{.size = plot.paper.letters, .weight = Weight::bold};
    const std::string words = parts::shortened(
        plot.of.side.electrode_words, 0.6 * plot.paper.box.width(), style.size, style.weight);
    const double wide = text_width(words, style.size, style.weight) + 2;
    const Wish wish{around(high, wide, style.size + 4, 7)};
    const Place place = placed({wish}, Room{grown(plot.paper.box, -3), plot.clear_of(), 0}).front();
    if (!place.free) return;
    plot.named.emplace_back(haloed(text({place.box.left + 1, place.box.bottom - 4}, words, style)));
    plot.taken.push_back(place.box);
}

void choices(Plot& plot) {
    std::vector<Wish> wishes;
    std::vector<Point> targets;
    for (const MarkedChoice& m : plot.marked) {
        const Point target = plot.paper.at(m.choice.high_ohm, m.choice.length_m);
        Wish wish;
        for (const double reach : {7.0, 16.0, 26.0}) {
            const auto ring = around(target, 2 * disc_radius, 2 * disc_radius, reach);
            wish.preferred.insert(wish.preferred.end(), ring.begin(), ring.end());
        }
        wishes.push_back(std::move(wish));
        targets.push_back(target);
    }
    const std::vector<Place> places =
        placed(wishes, Room{grown(plot.paper.box, -3), plot.clear_of(), 1.5});
    for (std::size_t i = 0; i < places.size(); ++i) {
        Items one = leader(grown(places[i].box, -1), targets[i], palette::ink);
        append(one, disc(places[i].box.centre(), plot.marked[i].sign));
        plot.items.emplace_back(Group{std::move(one), {}, "", "choice", plot.marked[i].sign});
        plot.taken.push_back(places[i].box);
    }
}

/// Places right or left of the band, the nearest to it first.
std::vector<Box> beside_edge(const Plot& plot, double wide, bool right) {
    std::vector<Box> boxes;
    const double high = plot.paper.letters + 4;
    for (const double off : {7.0, 12.0, 18.0, 26.0, 36.0}) {
        for (const auto& p : plot.points) {
            const Point at = plot.paper.at(right ? p.high_ohm : p.low_ohm, p.length_m);
            const double left = right ? at.x + off : at.x - off - wide;
            boxes.push_back(box_at({left, at.y - high / 2}, wide, high));
        }
    }
    return boxes;
}

/// Places inside the band along an edge of it, where it is broad enough.
std::vector<Box> inside_edge(const Plot& plot, double wide, bool right) {
    std::vector<Box> boxes;
    const double high = plot.paper.letters + 4;
    for (const auto& p : plot.points) {
        const Point from = plot.paper.at(p.low_ohm, p.length_m);
        const Point to = plot.paper.at(p.high_ohm, p.length_m);
        if (to.x - from.x < wide + 30) continue;
        const double left = right ? to.x - 12 - wide : from.x + 12;
        boxes.push_back(box_at({left, from.y - high / 2}, wide, high));
    }
    return boxes;
}

const Box* first_free(const Plot& plot, const std::vector<Box>& boxes,
                      const std::vector<Box>& taken) {
    for (const Box& box : boxes) {
        const bool covers = std::any_of(taken.begin(), taken.end(), [&](const Box& other) {
            return overlap(other, grown(box, 2));
        });
        if (!covers && contains(grown(plot.paper.box, -3), box)) return &box;
    }
    return nullptr;
}

/// Names an edge of the band beside it, else inside; true when there was room.
bool edge_words(Plot& plot, const std::string& words, bool right) {
    const TextStyle style{
        .size = plot.paper.letters, .weight = Weight::bold, .colour = palette::graphite};
    const double wide = text_width(words, style.size, style.weight) + 2;
    const std::vector<Box> beside = beside_edge(plot, wide, right);
    const std::vector<Box> inside = inside_edge(plot, wide, right);
    const Box* box = first_free(plot, beside, plot.clear_of());
    if (!box) box = first_free(plot, inside, plot.taken);
    if (!box) return false;
    plot.taken.push_back(*box);
    plot.items.emplace_back(haloed(text({box->left + 1, box->bottom - 4}, words, style)));
    return true;
}

void words_on(Plot& plot) {
    if (!edge_words(plot, "worst of the year", true)) edge_words(plot, "worst", true);
    if (!edge_words(plot, "best of the year", false)) edge_words(plot, "best", false);
    append(plot.items, std::move(plot.named));
}

}  // namespace

std::vector<answer::RodPointAnswer> drawable_points(const answer::GroundSideAnswer& side) {
    std::vector<answer::RodPointAnswer> points;
    for (const answer::RodPointAnswer& p : side.over_length) {
        if (!above_nothing(p.length_m) || !above_nothing(p.low_ohm) || !(p.high_ohm >= p.low_ohm))
            continue;
        points.push_back(p);
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const auto& a, const auto& b) { return a.length_m < b.length_m; });
    return points;
}

std::vector<MarkedChoice> marked_choices(const answer::GroundSideAnswer& side) {
    std::vector<MarkedChoice> marked;
    for (std::size_t i = 0; i < side.targets.size(); ++i) {
        if (side.targets[i].choices.empty()) continue;
        const answer::RodChoiceAnswer& choice = side.targets[i].choices.front();
        if (!above_nothing(choice.length_m) || !above_nothing(choice.high_ohm)) continue;
        const bool known = std::any_of(marked.begin(), marked.end(), [&](const MarkedChoice& m) {
            return m.choice.rods == choice.rods && m.choice.length_m == choice.length_m &&
                   m.choice.spacing_m == choice.spacing_m;
        });
        if (!known) marked.push_back({std::to_string(marked.size() + 1), i, choice});
    }
    return marked;
}

Drawn rod_plot(const RodPlotOf& of, const Space& room) {
    Plot plot{of, {}, drawable_points(of.side), marked_choices(of.side)};
    if (plot.points.empty()) return {{}, room.top};
    const double column_wide = room.phone ? 72 : 96;
    const double column_left = room.left + depth_wide;
    const double rows = target_row * static_cast<double>(targets_in_order(of.side).size());
    Paper& paper = plot.paper;
    paper.letters = room.letters();
    paper.box = {column_left + column_wide, room.top + rows + 18, room.right - 14, 0};
    paper.box.bottom = paper.box.top + (room.beside ? 640 : std::clamp(room.width(), 380.0, 640.0));
    paper.across = ohm_scale(plot);
    paper.across.from = paper.box.left;
    paper.across.to = paper.box.right;
    paper.down = {0, deepest(plot), paper.box.top, paper.box.bottom};
    ruling(plot);
    depths(plot, room.left);
    layers(plot);
    year_band(plot);
    electrode(plot);
    targets(plot, room.right);
    choices(plot);
    words_on(plot);
    append(plot.items, soil_column(of.soil, {column_left, paper.box.left, paper.down, of.rod_m}));
    const TextStyle axis{.size = paper.letters - 1, .colour = palette::graphite};
    plot.items.emplace_back(text({room.left, paper.box.top - 9}, "rod driven to", axis));
    return {std::move(plot.items), paper.box.bottom + paper.letters + 12};
}

}  // namespace toft::terrain
