#include "paper/outgoing.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

/// As the price counts them where none is stated.
constexpr std::size_t unstated_circuits = 2;

}  // namespace

std::vector<const answer::SchemeAnswer*> outgoing(const Subject& subject,
                                                  const std::string& building) {
    std::vector<const answer::SchemeAnswer*> all;
    for (const answer::SchemeAnswer* part : runs_of(subject)) {
        if (run_of(subject, *part).from == building) all.push_back(part);
    }
    return all;
}

std::string board_ways_words(const Subject& subject, const answer::SchemeAnswer& part) {
    const site::Building* building = site::find_building(subject.job, part.building.id);
    std::size_t circuits = building ? building->circuits.size() : 0;
    if (circuits == 0) circuits = unstated_circuits;
    const auto feeds = outgoing(subject, part.building.id);
    double spare = 0;
    if (building && building->spare_ways.known) spare = building->spare_ways.high;
    const double all = static_cast<double>(circuits + feeds.size()) + spare;
    std::string words = fmt::format("at least {}: {} for circuits", significant(all, 3), circuits);
    std::string names;
    for (const answer::SchemeAnswer* fed : feeds) {
        names += (names.empty() ? "" : ", ") + building_name(subject, fed->building.id);
    }
    if (!feeds.empty()) words += fmt::format(", {} to feed {}", feeds.size(), names);
    if (spare > 0) words += fmt::format(", {} spare", significant(spare, 3));
    return words;
}

}  // namespace toft::paper
