#include "parts/gland.h"

#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "parts/fittings.h"
#include "parts/ink.h"
#include "parts/words.h"

namespace toft::parts {

namespace {

constexpr double detail_wide = 150;
constexpr double gland_letters = 11;

/// The enclosure's wall at `x`, cut through, open for the gland.
Items wall(double x, double middle) {
    Items items;
    Style cut = stroked(palette::ink, weight::firm);
    cut.fill = palette::stone;
    items.emplace_back(Rect{{x, middle - 40, x + 6, middle - 11}, cut});
    items.emplace_back(Rect{{x, middle + 11, x + 6, middle + 40}, cut});
    return items;
}

/// Sheath up to `end`, bedding on into the enclosure.
Items cable(double left, double end, double right, double middle) {
    Items items;
    Style bedding = stroked(palette::ink, weight::thin);
    bedding.fill = palette::wash;
    items.emplace_back(Rect{{end, middle - 6, right, middle + 6}, bedding});
    Style sheath = stroked(palette::ink, weight::thin);
    sheath.fill = palette::graphite;
    items.emplace_back(Rect{{left, middle - 12, end, middle + 12}, sheath});
    return items;
}

Items nut(double left, double right, double middle, double reach) {
    Items items;
    Style brass = stroked(palette::ink, weight::firm);
    brass.fill = palette::paper;
    const double k = 3;
    items.emplace_back(Polygon{{{left + k, middle - reach},
                                {right - k, middle - reach},
                                {right, middle - reach + k},
                                {right, middle + reach - k},
                                {right - k, middle + reach},
                                {left + k, middle + reach},
                                {left, middle + reach - k},
                                {left, middle - reach + k}},
                               brass});
    for (const double y : {-reach / 3, reach / 3}) {
        items.emplace_back(
            Line{{left, middle + y}, {right, middle + y}, stroked(palette::ink, weight::hair)});
    }
    return items;
}

Items earthed_end(double left, double middle) {
    Items items = wall(left + 96, middle);
    append(items, cable(left, left + 34, left + 146, middle));
    for (const double side : {-1.0, 1.0}) {
        for (const double spread : {7.0, 9.0, 11.0}) {
            items.emplace_back(Line{{left + 34, middle + side * spread * 0.8},
                                    {left + 66, middle + side * (spread + 6)},
                                    stroked(palette::ink, 1.4)});
        }
    }
    append(items, nut(left + 62, left + 95, middle, 20));
    append(items, nut(left + 103, left + 112, middle, 16));
    append(
        items,
        protective_line(
            {{left + 107, middle + 16}, {left + 107, middle + 34}, {left + 146, middle + 34}}, 3));
    items.emplace_back(Circle{{left + 107, middle + 18}, 3, filled(palette::ink)});
    return items;
}

Items insulated_end(double left, double middle) {
    Items items = wall(left + 96, middle);
    append(items, cable(left, left + 34, left + 146, middle));
    for (const double y : {-9.0, 9.0}) {
        items.emplace_back(
            Line{{left + 34, middle + y}, {left + 44, middle + y}, stroked(palette::ink, 1.4)});
    }
    const Box sleeve{left + 26, middle - 15, left + 62, middle + 15};
    Style tube = stroked(palette::ink, weight::firm);
    tube.fill = palette::paper;
    items.emplace_back(Rect{sleeve, tube, 5});
    append(items, hatched(grown(sleeve, -1),
                          {.angle = 45, .spacing = 5, .style = stroked(palette::ink, 0.6)}));
    append(items, nut(left + 82, left + 95, middle, 15));
    append(items, nut(left + 103, left + 110, middle, 13));
    const Point cross{left + 126, middle + 30};
    for (const double side : {-1.0, 1.0}) {
        items.emplace_back(Line{cross + Point{-6, -6 * side}, cross + Point{6, 6 * side},
                                stroked(palette::ink, 2.2)});
    }
    items.emplace_back(
        Line{{left + 104, middle + 30}, {left + 116, middle + 30}, stroked(palette::ink, 1.4)});
    items.emplace_back(
        Line{{left + 136, middle + 30}, {left + 146, middle + 30}, stroked(palette::ink, 1.4)});
    return items;
}

}  // namespace

Items gland_detail(ArmourEnd end, const std::string& title, const Box& box) {
    const bool earthed = end == ArmourEnd::earthed;
    Items items;
    items.emplace_back(Group{
        earthed ? earthed_end(box.left, box.centre().y) : insulated_end(box.left, box.centre().y),
        {},
        "",
        earthed ? "armour-earthed" : "armour-insulated",
        ""});
    const double x = box.left + detail_wide + 12;
    const double room = box.right - x;
    double y = box.centre().y - 22;
    TextStyle bold{.size = gland_letters, .weight = Weight::bold};
    items.emplace_back(text({x, y}, shortened(title, room, gland_letters, Weight::bold), bold));
    const char* words = earthed
                            ? "armour earthed: the gland joins it to the earth terminal"
                            : "armour insulated: cut back under a sleeve, joined to nothing here";
    for (const std::string& line : paragraph(words, room, gland_letters, 4)) {
        y += line_spacing * gland_letters;
        items.emplace_back(text({x, y}, line, TextStyle{.size = gland_letters}));
    }
    return items;
}

}  // namespace toft::parts
