#include "parts/texture.h"

#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "parts/ink.h"
#include "parts/words.h"

namespace toft::parts {

namespace {

const Style faint_line = stroked(palette::faint, weight::hair);

Items level_lines(const Box& wall, double spacing) {
    Items items;
    for (double y = wall.bottom - spacing; y > wall.top; y -= spacing) {
        items.emplace_back(Line{{wall.left, y}, {wall.right, y}, faint_line});
    }
    return items;
}

Items upright_lines(const Box& wall, double spacing) {
    Items items;
    for (double x = wall.left + spacing; x < wall.right; x += spacing) {
        items.emplace_back(Line{{x, wall.top}, {x, wall.bottom}, faint_line});
    }
    return items;
}

/// Courses with joints; `shift` moves the joints of each second course.
Items courses(const Box& wall, double high, double wide, double shift) {
    Items items = level_lines(wall, high);
    bool odd = false;
    for (double y = wall.bottom; y - high > wall.top; y -= high) {
        for (double x = wall.left + (odd ? shift : wide); x < wall.right; x += wide) {
            items.emplace_back(Line{{x, y}, {x, y - high}, faint_line});
        }
        odd = !odd;
    }
    return items;
}

/// Ribs of sheet metal: upright lines in pairs.
Items ribs(const Box& wall, double spacing) {
    Items items = upright_lines(wall, spacing);
    append(items, upright_lines({wall.left + 4, wall.top, wall.right, wall.bottom}, spacing));
    return items;
}

Items folds(const Box& wall) {
    Items items;
    for (double x = wall.left + 30; x < wall.right; x += 30) {
        items.emplace_back(PathBuilder({x, wall.top})
                               .quad({x - 14, wall.centre().y}, {x, wall.bottom})
                               .inked(faint_line));
    }
    return items;
}

}  // namespace

Items wall_texture(site::Construction construction, const Box& wall) {
    switch (construction) {
        case site::Construction::timber:
            return level_lines(wall, 11);
        case site::Construction::brick:
            return courses(wall, 8, 24, 12);
        case site::Construction::stone:
            return courses(wall, 16, 37, 14);
        case site::Construction::insulated_panel:
            return upright_lines(wall, 46);
        case site::Construction::steel_frame:
            return ribs(wall, 26);
        case site::Construction::aluminium_frame:
            return ribs(wall, 44);
        case site::Construction::steel_container:
            return ribs(wall, 13);
        case site::Construction::canvas:
            return folds(wall);
    }
    return {};
}

std::vector<Point> roof_line(const Box& outer, double rise) {
    if (rise <= 0) return {{outer.left - 2, outer.top}, {outer.right + 2, outer.top}};
    const double over = 12;
    return {{outer.left - over, outer.top + 4},
            {outer.centre().x, outer.top - rise},
            {outer.right + over, outer.top + 4}};
}

Text building_name(const std::string& name, const Box& outer, double rise) {
    TextStyle style{.size = 13, .weight = Weight::bold, .anchor = Anchor::middle};
    const double room = (rise > 0 ? 0.6 : 0.95) * outer.width();
    if (text_width(name, style.size, style.weight) > room) style.size = 11;
    const std::string called = capital(shortened(name, room, style.size, style.weight));
    return text({outer.centre().x, outer.top - 10}, called, style);
}

Items building_shell(const Box& outer, double thick, double rise) {
    Items items;
    items.emplace_back(Rect{outer, filled(palette::paper)});
    items.emplace_back(Polyline{roof_line(outer, rise), stroked(palette::ink, weight::heavy)});
    if (rise > 0) {
        items.emplace_back(Line{{outer.left, outer.top},
                                {outer.right, outer.top},
                                stroked(palette::graphite, weight::hair)});
    }
    for (const double x : {outer.left, outer.right - thick}) {
        const Box wall = box_at({x, outer.top}, thick, outer.height());
        Style cut = stroked(palette::ink, weight::firm);
        cut.fill = palette::stone;
        items.emplace_back(Rect{wall, cut});
        append(items, hatched(wall, masonry));
    }
    return items;
}

}  // namespace toft::parts
