#include "drawing/callout.h"

#include "drawing/label.h"
#include "drawing/measure.h"

namespace toft::drawing {

namespace {

constexpr double rule_gap = 6;  // between the rule and the words

TextStyle style_of(const Callout& callout, std::size_t line) {
    TextStyle style{.size = callout.size, .weight = line == 0 ? Weight::bold : Weight::normal};
    style.colour = callout.colour;
    style.halo = callout.under;
    return style;
}

}  // namespace

Box callout_box(const Callout& callout) {
    double wide = 0;
    for (std::size_t i = 0; i < callout.lines.size(); ++i) {
        wide = std::max(wide, text_width(callout.lines[i], style_of(callout, i)));
    }
    const auto rows = static_cast<double>(callout.lines.size());
    return box_at({}, wide + rule_gap, rows * line_spacing * callout.size);
}

Items callout_at(const Callout& callout, const Box& box) {
    const bool rule_left = callout.target.x <= box.centre().x;
    const double rule_x = rule_left ? box.left : box.right;
    const Box rule{rule_x, box.top, rule_x, box.bottom};
    Items items = leader(rule, callout.target, palette::graphite);
    items.push_back(
        Line{{rule_x, box.top}, {rule_x, box.bottom}, stroked(palette::graphite, weight::hair)});
    const double lift = (line_spacing - ascent - descent) / 2 + ascent;
    for (std::size_t i = 0; i < callout.lines.size(); ++i) {
        TextStyle style = style_of(callout, i);
        style.anchor = rule_left ? Anchor::start : Anchor::end;
        const double x = rule_left ? box.left + rule_gap : box.right - rule_gap;
        const double y = box.top + (static_cast<double>(i) * line_spacing + lift) * callout.size;
        items.push_back(Text{{x, y}, callout.lines[i], style});
    }
    return items;
}

Items callouts_in(const std::vector<Callout>& callouts, const Room& room) {
    std::vector<Wish> wishes;
    for (const Callout& callout : callouts) {
        const Box box = callout_box(callout);
        wishes.push_back({around(callout.target, box.width(), box.height(), callout.reach)});
    }
    const std::vector<Place> places = placed(wishes, room);
    Items items;
    for (std::size_t i = 0; i < callouts.size(); ++i) {
        append(items, callout_at(callouts[i], places[i].box));
    }
    return items;
}

}  // namespace toft::drawing
