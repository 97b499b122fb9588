#include "shock/current_zone.h"

#include "base/limit.h"

#include <cmath>

namespace toft::shock {

const char* zone_word(CurrentZone zone) {
    constexpr const char* words[] = {"AC-1", "AC-2", "AC-3", "AC-4.1", "AC-4.2", "AC-4.3"};
    return words[static_cast<std::size_t>(zone)];
}

Amperes line_at(const tables::Shock& tables, tables::ZoneLine line, Seconds time) {
    const auto& points = tables.zones[static_cast<std::size_t>(line)];
    const double t = time.number();
    if (t <= points.front().x) return amperes(points.front().y.value);
    for (std::size_t i = 1; i < points.size(); ++i) {
        const TablePoint& a = points[i - 1];
        const TablePoint& b = points[i];
        if (t > b.x) continue;
        const double share = std::log(t / a.x) / std::log(b.x / a.x);
        return amperes(a.y.value * std::pow(b.y.value / a.y.value, share));
    }
    return amperes(points.back().y.value);
}

CurrentZone current_zone(const tables::Shock& tables, Amperes current, Seconds time) {
    std::size_t zone = 0;
    while (zone < tables::zone_lines &&
           !within(current.number(),
                   line_at(tables, static_cast<tables::ZoneLine>(zone), time).number())) {
        ++zone;
    }
    return static_cast<CurrentZone>(zone);
}

}  // namespace toft::shock
