#include "picture/lengths.h"

#include "base/text.h"
#include "drawing/measure.h"
#include "drawing/placement.h"
#include "parts/words.h"
#include "picture/ink.h"
#include "picture/route.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::picture {

namespace {

constexpr double word_row = line_spacing * plain_letters;

/// The words of a leg: its length in bold over what it is.
struct LegLabel {
    std::vector<std::string> lines;
    double wide = 0;
    double high() const { return word_row * static_cast<double>(lines.size()); }
};

LegLabel label_of(const site::Leg& leg, double room) {
    LegLabel label;
    label.lines.push_back(length_words(leg.length));
    const double width = std::clamp(room - 10, 88.0, 230.0);
    for (std::string& line : paragraph(leg_words(leg), width, plain_letters, 3)) {
        label.lines.push_back(std::move(line));
    }
    for (const std::string& line : label.lines) {
        label.wide = std::max(label.wide, text_width(line, plain_letters, Weight::bold));
    }
    return label;
}

Items label_items(const LegLabel& label, const Box& box) {
    Items items;
    for (std::size_t i = 0; i < label.lines.size(); ++i) {
        TextStyle style{.size = plain_letters, .weight = i == 0 ? Weight::bold : Weight::normal};
        style.anchor = Anchor::middle;
        const double y = box.top + word_row * static_cast<double>(i) + 0.95 * plain_letters;
        items.emplace_back(text({box.centre().x, y}, label.lines[i], style));
    }
    return items;
}

Items break_mark_on_chain(Point at) {
    Items items;
    items.emplace_back(Rect{box_at(at - Point{4, 3}, 8, 6), filled(palette::paper)});
    for (const double x : {-4.0, 4.0}) {
        items.emplace_back(Polyline{{at + Point{x - 2, 6}, at + Point{x + 2, 2},
                                     at + Point{x - 2, -2}, at + Point{x + 2, -6}},
                                    stroked(palette::graphite, weight::thin)});
    }
    return items;
}

void draw_chain(const Stage& s, Sketch& sketch) {
    const Style hair = stroked(palette::graphite, weight::hair);
    const RouteScale& route = s.route;
    sketch.put(Line{{route.start - 5, s.chain}, {route.end + 5, s.chain}, hair});
    const auto tick = [&](double x) {
        sketch.put(Line{{x, s.soil_foot + 4}, {x, s.chain + 5}, hair});
        sketch.put(Line{
            {x - 4, s.chain + 4}, {x + 4, s.chain - 4}, stroked(palette::graphite, weight::firm)});
    };
    tick(route.start);
    for (const LegSpan& span : route.legs) {
        tick(span.right);
        if (!span.broken) continue;
        sketch.draw(break_mark_on_chain({span.middle(), s.chain}));
    }
}

}  // namespace

void draw_lengths(const Stage& s, double foot, Sketch& sketch) {
    draw_chain(s, sketch);
    std::vector<LegLabel> labels;
    std::vector<Wish> wishes;
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        const LegSpan& span = s.route.legs[i];
        labels.push_back(label_of(s.run->legs[i], span.width()));
        wishes.push_back({{box_at({span.middle() - labels.back().wide / 2, s.chain + 8},
                                  labels.back().wide, labels.back().high())}});
    }
    const Box frame{s.route.start - 12, s.chain + 8, sheet_wide - margin, foot};
    const std::vector<Place> places = placed(wishes, Room{frame, {}, 3});
    std::size_t left_out = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Box& box = places[i].box;
        if (!places[i].free) {
            ++left_out;
            continue;
        }
        const double x = s.route.legs[i].middle();
        if (x < box.left + 6 || x > box.right - 6 || box.top > s.chain + 9) {
            sketch.put(Line{{x, s.chain},
                            {std::clamp(x, box.left, box.right), box.top},
                            stroked(palette::graphite, weight::hair)});
        }
        sketch.thing(label_items(labels[i], box), "leg-length", "");
    }
    if (left_out > 0) {
        TextStyle style{.size = plain_letters, .anchor = Anchor::end, .colour = palette::accent};
        sketch.put(text({sheet_wide - margin, s.soil_foot + 14},
                        fmt::format("no room for the words of {} legs", left_out), style));
    }
}

void draw_scales(const Stage& s, const Box& box, Sketch& sketch) {
    TextStyle style{.size = 9.5, .colour = palette::graphite};
    double y = box.top + 8;
    const auto say = [&](const std::string& words) {
        for (const std::string& line : paragraph(words, box.width(), style.size, 3)) {
            sketch.put(text({box.left, y}, line, style));
            y += 11.6;
        }
    };
    const double scale = s.route.units_per_metre;
    if (scale > 0) {
        double bar = 0.1;
        for (const double step :
             {0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0}) {
            if (step * scale <= box.width() - 40) bar = step;
        }
        const double wide = bar * scale;
        Style whole = stroked(palette::ink, weight::thin);
        sketch.put(Rect{{box.left, y - 8, box.left + wide, y - 3}, whole});
        sketch.put(Rect{{box.left, y - 8, box.left + wide / 2, y - 3}, filled(palette::ink)});
        sketch.put(text({box.left + wide + 6, y - 1}, significant(bar, 3) + " m", style));
        y += 11;
    }
    double sum = 0;
    bool known = true;
    for (const site::Leg& leg : s.run->legs) {
        known = known && leg.length.single();
        sum += leg.length.high.number();
    }
    if (known) say(fmt::format("the whole run {} m", significant(sum, 4)));
    // Said as a ratio: on paper the picture is made as small as the sheet asks.
    const double ratio = scale > 0 ? s.units_per_metre_deep / scale : 0;
    say(ratio > 0 ? fmt::format("depths drawn {} times as large as lengths", significant(ratio, 2))
                  : "depths to scale among themselves");
    say("rises and buildings not to scale");
    if (s.route.any_broken) say("double zigzag: longer than drawn");
}

}  // namespace toft::picture
