#include "lever/ideas.h"

namespace toft::lever {

namespace {

double usual_start(const Ground& ground, const site::Circuit& circuit) {
    const auto* row = tables::find_circuit_kind(ground.catalogue, site::word(circuit.kind));
    return row ? row->start : 1;
}

}  // namespace

Changes gentler_start(const Ground& ground) {
    Changes all;
    const double soft = value_of(ground, "soft-start");
    const auto& circuits = ground.building().circuits;
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        const site::Circuit& c = circuits[i];
        const double starts =
            c.starting_multiple.known ? c.starting_multiple.high : usual_start(ground, c);
        if (c.drive == site::Answer::yes || starts <= soft) continue;
        Change change{"soft-start", c.name, ground.job};
        change.job.buildings[ground.place()].circuits[i].starting_multiple = stated(soft);
        all.push_back(std::move(change));
    }
    return all;
}

}  // namespace toft::lever
