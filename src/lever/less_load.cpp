#include "demand/scenario.h"
#include "lever/ideas.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::lever {

namespace {

site::Building& changed_building(Change& change, const Ground& ground) {
    return change.job.buildings[ground.place()];
}

/// Loads stated in watts, the largest first.
std::vector<std::size_t> heaviest_first(const site::Building& b) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < b.circuits.size(); ++i) {
        if (b.circuits[i].load_w.known) order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&](std::size_t x, std::size_t y) {
        return b.circuits[x].load_w.high > b.circuits[y].load_w.high;
    });
    return order;
}

/// The second heaviest load waits for the heaviest: the demand is that without it. Lines are not
/// told apart here, so that it is for one phase only.
void one_waits(const Ground& ground, Changes& all) {
    const site::Building& b = ground.building();
    const std::vector<std::size_t> order = heaviest_first(b);
    if (ground.job.intake.phases != 1 || !demand::by_circuits(b) || order.size() < 2) return;
    Silent silent;
    const demand::Place<Silent> place{&ground.catalogue.demand, ground.job.intake.u0, 1, ""};
    const site::Scenario scenario = ground.job.wishes.scenario.value_or(site::Scenario::likely);
    site::Building without = b;
    without.circuits.erase(without.circuits.begin() + static_cast<std::ptrdiff_t>(order[1]));
    const auto whole = demand::building_demand(silent, place, b, scenario);
    const auto less = demand::building_demand(silent, place, without, scenario);
    if (!(less.heaviest < whole.heaviest)) return;
    Change change{"load-management", b.circuits[order[1]].name, ground.job};
    changed_building(change, ground).load = stated(less.heaviest);
    all.push_back(std::move(change));
}

void slower_charging(const Ground& ground, Changes& all) {
    const double watts = value_of(ground, "slower-charging") * ground.job.intake.u0.number();
    const auto& circuits = ground.building().circuits;
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        const site::Circuit& c = circuits[i];
        if (c.kind != site::CircuitKind::vehicle_charging) continue;
        if (!c.load_w.known || c.load_w.high <= watts * c.phases) continue;
        Change change{"slower-charging", c.name, ground.job};
        changed_building(change, ground).circuits[i].load_w = stated(watts * c.phases);
        all.push_back(std::move(change));
    }
}

}  // namespace

Changes less_load(const Ground& ground) {
    Changes all;
    one_waits(ground, all);
    slower_charging(ground, all);
    const site::Building& b = ground.building();
    if (b.future_load.known && b.future_load.high > amperes(0)) {
        Change change{"no-later-load", name_of(b), ground.job};
        changed_building(change, ground).future_load = stated(amperes(0));
        all.push_back(std::move(change));
    }
    if (ground.job.wishes.scenario == site::Scenario::everything) {
        Change change{"likely-load", "", ground.job};
        change.job.wishes.scenario = site::Scenario::likely;
        all.push_back(std::move(change));
    }
    return all;
}

}  // namespace toft::lever
