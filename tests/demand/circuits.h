#pragma once
// Circuits and places for tests of demand.

#include "demand/circuit.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <string>

namespace toft::demand {

inline site::Circuit circuit(site::CircuitKind kind) {
    site::Circuit c;
    c.name = site::word(kind);
    c.kind = kind;
    return c;
}

/// One of that many amperes at 230 V.
inline site::Circuit drawing(site::CircuitKind kind, double amps, int phases = 1) {
    site::Circuit c = circuit(kind);
    c.phases = phases;
    c.load_w = support::measured(amps * 230 * phases);
    c.power_factor = support::measured(1.0);
    return c;
}

inline Place<Silent> place(int phases = 1) {
    return {&support::catalogue().demand, volts(230), phases, ""};
}

inline CircuitLoad<Silent> load_of(const site::Circuit& circuit) {
    Silent ledger;
    return circuit_load(ledger, place(), circuit, 1);
}

}  // namespace toft::demand
