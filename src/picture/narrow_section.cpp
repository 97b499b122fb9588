#include "picture/narrow_section.h"

#include "drawing/label.h"
#include "drawing/measure.h"
#include "drawing/placement.h"
#include "drawing/scaled.h"
#include "parts/words.h"
#include "picture/ink.h"
#include "picture/lengths.h"
#include "picture/place.h"
#include "picture/route.h"
#include "picture/sketch.h"

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double disc = 8.5;  // radius of a number's disc
constexpr double indent = 26;
constexpr double two_columns = 620;  // from this width on
constexpr double roof = 62;          // drawn above the eaves

/// From the section's own units to the sheet's.
struct Fit {
    double k = 1;
    Point shift = {};
    Point at(Point p) const { return p * k + shift; }
    Box at(const Box& b) const {
        const Point from = at(Point{b.left, b.top});
        return box_at(from, b.width() * k, b.height() * k);
    }
};

Items marker(Point centre, const std::string& sign) {
    Style ring = stroked(palette::ink, 1.2);
    ring.fill = palette::paper;
    const TextStyle style{.size = 10.5, .weight = Weight::bold, .anchor = Anchor::middle};
    return {Circle{centre, disc, ring}, text(centre + Point{0, 3.8}, sign, style)};
}

std::vector<Wish> wishes_for(const std::vector<Note>& notes, const Fit& fit) {
    std::vector<Wish> wishes;
    for (const Note& note : notes) {
        Wish wish;
        for (const double reach : {4.0, 12.0, 24.0}) {
            const auto ring = around(fit.at(note.target), 2 * disc, 2 * disc, reach);
            wish.preferred.insert(wish.preferred.end(), ring.begin(), ring.end());
        }
        wishes.push_back(std::move(wish));
    }
    return wishes;
}

/// Numbers beside what they stand for, clear of one another, and clear of what is drawn as far as
/// there is room.
Items numbers(const Sketch& sketch, const Fit& fit, const Box& frame) {
    std::vector<Box> taken;
    for (const Box& box : sketch.taken) taken.push_back(fit.at(box));
    const std::vector<Wish> wishes = wishes_for(sketch.callouts, fit);
    std::vector<Place> places = placed(wishes, Room{frame, taken, 1.5});
    const bool all =
        std::all_of(places.begin(), places.end(), [](const Place& p) { return p.free; });
    if (!all) places = placed(wishes, Room{frame, {}, 1.5});
    Items items;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Point target = fit.at(sketch.callouts[i].target);
        Items one = leader(grown(places[i].box, -1), target, palette::ink);
        append(one, marker(places[i].box.centre(), std::to_string(i + 1)));
        items.emplace_back(Group{std::move(one), {}, "", "number", sketch.callouts[i].head});
    }
    return items;
}

void set_names(const Stage& s, const Fit& fit, double left, double right, Items& items) {
    const auto name = [&](const site::Building& building, const Box& natural, double y) {
        const Box box = fit.at(natural);
        TextStyle style{.size = narrow_letters, .weight = Weight::bold, .anchor = Anchor::middle};
        const double half = std::min(box.centre().x - left, right - box.centre().x);
        const double room = std::min(2 * half, 0.48 * (right - left));
        const std::string words =
            capital(shortened(name_or(building.name, building.id), room, style.size, style.weight));
        items.emplace_back(text({box.centre().x, y}, words, style));
    };
    const double y = fit.at(Point{0, s.eaves - roof}).y - 4;
    name(*s.house, s.house_box, y);
    name(*s.far, s.far_box, y);
}

std::string leg_letter(std::size_t i) {
    return std::string(1, static_cast<char>('a' + std::min<std::size_t>(i, 25)));
}

/// Ticks at the ends of the legs, and a letter under each.
Items chain(const Stage& s, const Fit& fit, double y) {
    Items items;
    const Style hair = stroked(palette::graphite, weight::hair);
    const auto x_of = [&](double x) { return fit.at(Point{x, 0}).x; };
    items.emplace_back(Line{{x_of(s.route.start) - 4, y}, {x_of(s.route.end) + 4, y}, hair});
    const auto tick = [&](double x) { items.emplace_back(Line{{x, y - 5}, {x, y + 5}, hair}); };
    tick(x_of(s.route.start));
    double free_from = -1e9;
    double drop = 0;
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        tick(x_of(s.route.legs[i].right));
        const double x = x_of(s.route.legs[i].middle());
        drop = x < free_from ? 14 - drop : 0;
        free_from = x + 10;
        const TextStyle style{
            .size = narrow_letters, .weight = Weight::bold, .anchor = Anchor::middle};
        items.emplace_back(text({x, y + 16 + drop}, leg_letter(i), style));
    }
    return items;
}

void list_some(const std::vector<Note>& notes, std::size_t from, std::size_t to,
               WordColumn& column) {
    for (std::size_t i = from; i < to; ++i) {
        column.gap(5);
        column.placed(marker({column.left() + disc + 1, column.y() + 9}, std::to_string(i + 1)),
                      column.y());
        column.words(notes[i].head, {.size = narrow_letters, .weight = Weight::bold}, 3, indent);
        for (const std::string& line : notes[i].more)
            column.words(line, {.size = narrow_letters}, 6, indent);
    }
}

/// What the numbers stand for; in two columns where there is room.
void list_notes(const std::vector<Note>& notes, WordColumn& column) {
    if (column.width() < two_columns) return list_some(notes, 0, notes.size(), column);
    const std::size_t half = (notes.size() + 1) / 2;
    const double middle = column.left() + column.width() / 2;
    WordColumn left(column.left(), middle - 12, column.y());
    WordColumn right(middle + 12, column.right(), column.y());
    list_some(notes, 0, half, left);
    list_some(notes, half, notes.size(), right);
    column.placed(left.take(), left.y());
    column.placed(right.take(), right.y());
}

void list_legs(const Stage& s, const Fit& fit, WordColumn& column) {
    column.heading("the run, leg by leg");
    for (std::size_t i = 0; i < s.run->legs.size(); ++i) {
        const site::Leg& leg = s.run->legs[i];
        const TextStyle bold{.size = narrow_letters, .weight = Weight::bold};
        column.placed({text({column.left(), column.y() + narrow_letters}, leg_letter(i), bold)},
                      column.y());
        std::string words = length_words(leg.length) + ", " + leg_words(leg);
        if (site::buried(leg.method) && leg.depth.known) {
            words += ", " + length_words(leg.depth) + " deep";
        }
        column.words(words, {.size = narrow_letters}, 5, indent);
        column.gap(2);
    }
    Stage shown = s;
    shown.route.units_per_metre *= fit.k;
    shown.units_per_metre_deep *= fit.k;
    Sketch scales;
    draw_scales(shown, box_at({column.left(), column.y() + 8}, 228, 80), scales);
    const double foot = box_of(scales.items).bottom;
    column.placed(std::move(scales.items), foot);
}

}  // namespace

void narrow_section(const Stage& stage, WordColumn& column) {
    const Sketch sketch = whole_section(stage);
    const double left = margin - 14;
    const double k = column.width() / (stage.wide - 2 * left);
    const double top = column.y() + 22;  // of the roofs; names stand above
    const Fit fit{k, {column.left() - left * k, top - (stage.eaves - roof) * k}};
    Items items{
        Group{scaled_without_words(sketch.items, k), fit.shift, "", "section", "along the route"}};
    set_names(stage, fit, column.left(), column.right(), items);
    const double soil = fit.at(Point{0, stage.soil_foot}).y;
    append(items, numbers(sketch, fit, {column.left(), top, column.right(), soil - 1}));
    append(items, chain(stage, fit, soil + 12));
    column.placed(std::move(items), soil + 44);
    list_notes(sketch.callouts, column);
    list_legs(stage, fit, column);
}

}  // namespace toft::picture
