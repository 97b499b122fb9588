#include "outage/grid.h"

#include "drawing/hatch.h"
#include "drawing/measure.h"
#include "parts/words.h"

#include <algorithm>

namespace toft::outage {

namespace {

constexpr double names_share = 0.46;
constexpr double widest_names = 300;
constexpr double widest_column = 56;
constexpr double least_column = 13;
constexpr std::size_t most_lines = 3;  // of a row's words
constexpr double least_row = 20;
constexpr double cell_high = 14;

const Hatch maybe{.angle = -45, .spacing = 4, .style = stroked(palette::ink, weight::thin)};

/// A fault that overcurrent devices see too: told together where the same goes dark.
bool heavy(const guard::Event& event) {
    return guard::on_circuit(event.trouble) && event.trouble != guard::Trouble::weak_earth;
}

bool alike(const guard::Event& a, const guard::Event& b) {
    return heavy(a) && heavy(b) && a.circuit == b.circuit && a.dark == b.dark;
}

const char* short_word(guard::Trouble trouble) {
    switch (trouble) {
        case guard::Trouble::solid_earth:
            return "solid earth fault";
        case guard::Trouble::overload:
            return "overload";
        default:
            return "short circuit";
    }
}

std::string part_name(const guard::Darkness& dark, std::size_t circuit) {
    for (const guard::Part& part : dark.parts) {
        if (!part.house && part.circuit == circuit) return part.name;
    }
    return "";
}

/// Left of the cells a row is ruled off where another circuit or the run begins.
bool begins_group(const std::vector<GridRow>& rows, std::size_t i) {
    if (i == 0) return true;
    const guard::Event& here = *rows[i].event;
    const guard::Event& before = *rows[i - 1].event;
    const bool on_one = guard::on_circuit(here.trouble);
    return on_one != guard::on_circuit(before.trouble) ||
           (on_one && here.circuit != before.circuit);
}

}  // namespace

std::vector<GridRow> grid_rows(const guard::Darkness& dark, std::size_t circuits) {
    std::vector<GridRow> rows;
    const std::vector<guard::Event>& all = dark.events;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (guard::on_circuit(all[i].trouble) && all[i].circuit >= circuits) continue;
        std::size_t last = i;
        std::string name = short_word(all[i].trouble);
        while (last + 1 < all.size() && alike(all[i], all[last + 1])) {
            ++last;
            name += (last + 1 < all.size() && alike(all[i], all[last + 1]) ? ", " : " or ") +
                    std::string(short_word(all[last].trouble));
        }
        const std::string of = part_name(dark, all[i].circuit);
        rows.push_back({last == i ? all[i].name : name + " on " + of, &all[i]});
        i = last;
    }
    return rows;
}

Columns columns_of(const guard::Darkness& dark, const Space& room) {
    Columns c;
    c.names = room.left;
    c.first = room.left + std::min(names_share * room.width(), widest_names);
    const double wide = room.right - c.first;
    const std::size_t most =
        std::max<std::size_t>(4, static_cast<std::size_t>(std::max(0.0, wide / least_column)));
    const std::size_t house = static_cast<std::size_t>(std::count_if(
        dark.parts.begin(), dark.parts.end(), [](const guard::Part& p) { return p.house; }));
    for (std::size_t i = 0; i < dark.parts.size(); ++i) {
        if (!dark.parts[i].house && c.circuits + house >= most) {
            ++c.left_out;
            continue;
        }
        c.circuits += dark.parts[i].house ? 0 : 1;
        c.parts.push_back(i);
    }
    const auto count = static_cast<double>(std::max<std::size_t>(c.parts.size(), 1));
    c.each = std::min(wide / count, widest_column);
    return c;
}

Items cell(const Box& box, Certainty certainty) {
    Items items;
    if (certainty == Certainty::surely) {
        items.emplace_back(Rect{box, filled(palette::ink)});
        return items;
    }
    if (certainty == Certainty::possibly) append(items, hatched(box, maybe));
    const Colour edge = certainty == Certainty::no ? palette::faint : palette::ink;
    items.emplace_back(Rect{box, stroked(edge)});
    return items;
}

Drawn grid(const guard::Darkness& dark, const Columns& columns, const Space& room, double top) {
    const double size = room.letters();
    const double line = 1.25 * size;
    const TextStyle style{.size = size};
    Drawn drawn;
    double y = top;
    const std::vector<GridRow> rows = grid_rows(dark, columns.circuits);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        const auto words =
            parts::paragraph(rows[r].name, columns.first - columns.names - 10, size, most_lines);
        const double high = std::max(least_row, line * static_cast<double>(words.size()) + 5);
        if (begins_group(rows, r)) {
            drawn.items.emplace_back(
                Line{{columns.names, y}, {columns.right(), y}, stroked(palette::pencil)});
        }
        Items items;
        for (std::size_t i = 0; i < words.size(); ++i) {
            const double at = y + 3 + size + line * static_cast<double>(i);
            items.emplace_back(text({columns.names, at}, words[i], style));
        }
        for (std::size_t i = 0; i < columns.parts.size(); ++i) {
            const double half = std::min(columns.each, 26.0) / 2 - 1.5;
            const double x = columns.centre(i);
            const double middle = y + high / 2;
            append(items, cell({x - half, middle - cell_high / 2, x + half, middle + cell_high / 2},
                               rows[r].event->dark[columns.parts[i]]));
        }
        drawn.items.emplace_back(Group{std::move(items), {}, "", "fault", rows[r].name});
        y += high;
    }
    drawn.items.emplace_back(
        Line{{columns.names, y}, {columns.right(), y}, stroked(palette::pencil)});
    drawn.foot = y + 2;
    return drawn;
}

}  // namespace toft::outage
