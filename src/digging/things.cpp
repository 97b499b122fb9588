#include "digging/things.h"

#include "digging/ink.h"

#include <algorithm>

namespace toft::digging {

namespace {

Items cable_circle(Point centre, double radius, bool armoured, bool there) {
    Style sheath = stroked(palette::ink, 1.4);
    sheath.fill = palette::paper;
    if (there) sheath.dash = {3, 2};
    Items items{Circle{centre, radius, sheath}};
    if (armoured && radius > 3) {
        items.emplace_back(Circle{centre, 0.78 * radius,
                                  dashed(palette::ink, std::max(0.8, 0.2 * radius), {1.6, 1.2})});
    }
    items.emplace_back(Circle{centre, 0.55 * radius, filled(palette::pencil)});
    return items;
}

/// Cables on the floor of a bore, side by side as far as they go.
Items in_bore(const std::vector<Metres>& inside, bool armoured, Point centre, double bore,
              double k) {
    Items items;
    double wide = 0;
    for (const Metres across : inside) wide += across.number() * k;
    double x = centre.x - wide / 2;
    for (std::size_t i = 0; i < inside.size(); ++i) {
        const double radius = inside[i].number() * k / 2;
        x += radius;
        const double off = x - centre.x;
        const double reach = std::max(0.0, bore - radius);
        const double drop = std::sqrt(std::max(0.0, reach * reach - off * off));
        append(items, cable_circle({x, centre.y + drop}, radius, armoured && i == 0, false));
        x += radius;
    }
    return items;
}

}  // namespace

Items lying_section(const trench::Lying& lying, Point centre, double k) {
    constexpr double bore_share = 0.84;  // of a duct for data, about that of the ducts sold
    const double radius = lying.across.number() * k / 2;
    if (lying.kind == trench::Kind::cable) {
        return cable_circle(centre, radius, lying.armoured, lying.there);
    }
    if (lying.kind == trench::Kind::core) {
        return {Circle{centre, radius, filled(palette::paper)},
                Circle{centre, radius, stroked(palette::ink, 1)},
                Circle{centre, 0.6 * radius, filled(palette::ink)}};
    }
    Style wall = stroked(palette::ink, 1.2);
    wall.fill = palette::wash;
    Style bore = stroked(palette::ink, 0.8);
    bore.fill = palette::paper;
    Items items{Circle{centre, radius, wall}, Circle{centre, bore_share * radius, bore}};
    append(items, in_bore(lying.inside, lying.armoured, centre, bore_share * radius, k));
    return items;
}

}  // namespace toft::digging
