#include "ware/behind.h"

#include <algorithm>

namespace toft::ware {

namespace {

bool gives(const site::Building* building) {
    if (!building) return false;
    return std::any_of(building->circuits.begin(), building->circuits.end(),
                       [](const site::Circuit& circuit) {
                           return circuit.kind == site::CircuitKind::solar ||
                                  circuit.kind == site::CircuitKind::battery;
                       });
}

}  // namespace

Behind behind(const site::Job& job, const std::vector<RunBill>& parts, std::size_t place) {
    Behind found;
    // Buildings behind that board, the nearest first; no longer than there are runs.
    std::vector<std::string> reached{parts[place].run.to};
    for (std::size_t i = 0; i < reached.size() && i <= parts.size(); ++i) {
        found.gives = found.gives || gives(site::find_building(job, reached[i]));
        for (const RunBill& part : parts) {
            if (part.run.from != reached[i]) continue;
            reached.push_back(part.run.to);
            if (i == 0) found.feeds.push_back(part.scheme.building.name);
        }
    }
    const site::Building* building = site::find_building(job, parts[place].run.to);
    if (building && building->spare_ways.known) found.spare_ways = building->spare_ways.high;
    return found;
}

}  // namespace toft::ware
