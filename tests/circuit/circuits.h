#pragma once
// A shed with one circuit, and a board that feeds it.

#include "circuit/design.h"
#include "support/catalogue.h"
#include "support/jobs.h"

namespace toft::circuit {

inline site::Circuit heater(double watts, double length_m) {
    site::Circuit c;
    c.name = "Heater";
    c.kind = site::CircuitKind::fixed_load;
    c.load_w = support::measured(watts);
    c.power_factor = support::measured(1.0);
    c.length = support::measured(metres(length_m));
    return c;
}

inline site::Circuit ring(double round_m) {
    site::Circuit c;
    c.name = "Sockets";
    c.kind = site::CircuitKind::socket_ring;
    c.loop_length = support::measured(metres(round_m));
    return c;
}

inline site::Circuit saw(double watts, double multiple, double length_m) {
    site::Circuit c = heater(watts, length_m);
    c.name = "Saw";
    c.kind = site::CircuitKind::motor;
    c.starting_multiple = support::measured(multiple);
    return c;
}

inline site::Job job_with(std::vector<site::Circuit> circuits) {
    site::Job job = support::plain_job();
    job.buildings[1].circuits = std::move(circuits);
    return job;
}

/// A heater's like on three phases, with that much third harmonic in per cent.
inline site::Circuit three_phase(double watts, double length_m, double harmonic) {
    site::Circuit c = heater(watts, length_m);
    c.name = "Press";
    c.phases = 3;
    c.third_harmonic = support::measured(harmonic);
    return c;
}

/// A board that loses `drop_percent` and stands behind loops of that many ohms.
inline Feed<Silent> board(double drop_percent = 1, double loop_ohm = 0.4) {
    Feed<Silent> feed;
    feed.u0 = volts(230);
    feed.c_min = 0.95;
    feed.drop = volts(2.3 * drop_percent);
    feed.run = {ohms(0.15), ohms(0.01)};
    feed.source = ohms(0.2);
    for (std::size_t h = 0; h < heats; ++h) feed.zn[h] = feed.zs[h] = ohms(loop_ohm);
    feed.short_most = feed.earth_most = amperes(900);
    return feed;
}

inline CircuitDesign<Silent> designed(const site::Job& job, const Feed<Silent>& feed = board(),
                                      std::size_t which = 0) {
    Silent silent;
    const int phases = feed.three_phase ? 3 : 1;
    const auto circuits =
        prepare(silent, support::catalogue(), job, job.buildings[1], phases).judged;
    CircuitDesign<Silent> design;
    circuit::design(silent, support::catalogue(), circuits.at(which), feed, design);
    return design;
}

}  // namespace toft::circuit
