#include "terrain/body_table.h"

#include "drawing/measure.h"
#include "parts/words.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/paper.h"
#include "terrain/sheet.h"
#include "terrain/volts_plot.h"

#include <algorithm>

namespace toft::terrain {

namespace {

constexpr double table_letters = 12;
constexpr double widest_figures = 120;

/// The conditions of all ways, in the order in which they first come.
std::vector<std::string> conditions_of(const answer::LostNeutralAnswer& fault) {
    std::vector<std::string> all;
    for (const answer::LostNeutralWayAnswer& way : fault.ways) {
        for (const answer::BodyAnswer& body : way.body) {
            if (std::find(all.begin(), all.end(), body.condition) == all.end()) {
                all.push_back(body.condition);
            }
        }
    }
    return all;
}

std::string figures(const answer::LostNeutralWayAnswer& way, const std::string& condition) {
    for (const answer::BodyAnswer& body : way.body) {
        if (body.condition != condition) continue;
        return range_words(body.low_ma, body.high_ma, "mA");
    }
    return "not known";
}

/// Centres of the columns; the figures stand right of the conditions, or under them.
struct Columns {
    double left = 0;
    double each = 0;
    bool under = false;
};

Columns columns_of(const parts::WordColumn& column, std::size_t ways) {
    const auto count = static_cast<double>(std::max<std::size_t>(ways, 1));
    const double room = 0.62 * column.width() / count;
    if (room >= 96) {
        const double each = std::min(room, widest_figures);
        return {column.left() + 0.38 * column.width(), each, false};
    }
    return {column.left(), std::min(column.width() / count, widest_figures), true};
}

void head(const Columns& at, std::size_t ways, parts::WordColumn& column) {
    Items items;
    for (std::size_t i = 0; i < ways; ++i) {
        const double x = at.left + at.each * static_cast<double>(i) + disc_radius + 1;
        append(items, disc({x, column.y() + disc_radius + 2}, way_letter(i)));
    }
    column.placed(std::move(items), column.y() + 2 * disc_radius + 5);
}

void row(const answer::LostNeutralAnswer& fault, const std::string& condition, const Columns& at,
         parts::WordColumn& column) {
    const double top = column.y();
    const double right = at.under ? column.right() : at.left - 10;
    parts::WordColumn words(column.left(), right, top);
    words.words(condition, {.size = table_letters}, 4);
    const double first = at.under ? words.y() : top;
    Items items = words.take();
    for (std::size_t i = 0; i < fault.ways.size(); ++i) {
        const double x = at.left + at.each * static_cast<double>(i);
        const TextStyle style{.size = table_letters, .weight = Weight::bold};
        const std::string cell = figures(fault.ways[i], condition);
        items.emplace_back(text({x, first + table_letters},
                                parts::shortened(cell, at.each - 6, table_letters, style.weight),
                                style));
    }
    const double foot = std::max(words.y(), first + 1.3 * table_letters) + 5;
    items.emplace_back(
        Line{{column.left(), foot}, {column.right(), foot}, stroked(palette::faint)});
    column.placed({Group{std::move(items), {}, "", "body", condition}}, foot + 3);
}

}  // namespace

void body_table(const answer::LostNeutralAnswer& fault, parts::WordColumn& column) {
    const std::vector<std::string> conditions = conditions_of(fault);
    if (conditions.empty()) return;
    column.heading("through a body that touches it");
    say_small(column,
              "At the low and at the high volts; of a hundred people, 95 have more resistance.");
    const Columns at = columns_of(column, fault.ways.size());
    head(at, fault.ways.size(), column);
    for (const std::string& condition : conditions) row(fault, condition, at, column);
}

}  // namespace toft::terrain
