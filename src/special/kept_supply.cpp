// A source of the outbuilding that goes on when the mains fails: its earth, its changeover, its
// faults, its circuits.

#include "base/limit.h"
#include "base/text.h"
#include "special/parts.h"

#include <fmt/format.h>

namespace toft::special {

namespace {

using site::CircuitKind;
using site::KeepsSupply;

bool source(const site::Circuit& circuit) {
    return circuit.kind == CircuitKind::battery || circuit.kind == CircuitKind::solar;
}

std::string earth_words(const Case& c, KeepsSupply keeps) {
    const std::string stable =
        significant(c.view.limits().electrode_stable.value.number(), 3) + " Ω";
    const char* link =
        "; join neutral and earth there by a contact that closes only while the mains is cut off";
    if (keeps == KeepsSupply::house) {
        const char* electrode = c.view.on_tt()
                                    ? "use the house's own electrode"
                                    : "add an electrode at the house's earthing terminal";
        return fmt::format("{}, measured, at most {}{}", electrode, stable, link);
    }
    return fmt::format(
        "an electrode at the building, measured, at most {}; where the scheme gives the building "
        "its own it is there, else add one{}",
        stable, link);
}

void earth(const Case& c, KeepsSupply keeps, std::vector<Advice>& all) {
    all.push_back({"kept supply: earth",
                   "without the mains the supplier's earth is not to be relied on",
                   earth_words(c, keeps), footing(c, "island-earth"), true});
}

void changeover(const Case& c, KeepsSupply keeps, std::vector<Advice>& all) {
    all.push_back(
        {"kept supply: changeover",
         "the source never feeds the network outside: all live conductors, the neutral too, pass "
         "a changeover that is interlocked and breaks before it makes",
         keeps == KeepsSupply::house
             ? "a changeover at the house, behind the meter. The run is then fed from its far "
               "end: that is not judged here, neither its devices nor its faults nor its drop"
             : "a changeover at the building's board, in front of the circuits it keeps; run and "
               "house stay dead. A notice at both boards: two supplies",
         footing(c, "island-switch"), true});
}

void faults(const Case& c, std::vector<Advice>& all) {
    all.push_back({"kept supply: faults", "protection must act on what the source can give",
                   "an inverter gives little more than its rated current: breakers and fuses may "
                   "never act, and no figure here holds then. Residual current devices do, with "
                   "neutral and earth joined as above; for short circuits have its maker's word "
                   "that it shuts down",
                   footing(c, "island-faults"), true});
}

/// Watts of all that draws, as far as stated.
double drawn(const Case& c) {
    double watts = 0;
    for (const site::Circuit& circuit : c.view.building->circuits) {
        if (!source(circuit) && circuit.load_w.known) watts += circuit.load_w.high;
    }
    return watts;
}

std::string circuits_words(const Case& c, const site::Circuit& kept) {
    const std::string move =
        "put those it keeps on a board of their own; motors, showers and charging points seldom "
        "belong there";
    const double asked = drawn(c);
    if (!kept.load_w.known || !(asked > 0) || within(asked, kept.load_w.low)) {
        return "name the circuits it keeps and " + move;
    }
    return fmt::format("the building's circuits are stated at {} W, this source at {} W: {}",
                       significant(asked, 3), significant(kept.load_w.low, 3), move);
}

}  // namespace

void kept_supply(const Case& c, std::vector<Advice>& all) {
    const site::Circuit* kept = nullptr;
    bool unsaid = false;
    for (const site::Circuit& circuit : c.view.building->circuits) {
        if (!source(circuit)) continue;
        unsaid = unsaid || (circuit.kind == CircuitKind::battery && !circuit.keeps_supply);
        const KeepsSupply keeps = circuit.keeps_supply.value_or(KeepsSupply::nothing);
        if (keeps != KeepsSupply::nothing && (!kept || *kept->keeps_supply < keeps)) {
            kept = &circuit;
        }
    }
    if (!kept) {
        if (!unsaid) return;
        all.push_back({"kept supply",
                       "a source that goes on without the mains has its own earth, changeover and "
                       "protection",
                       "whether the battery does is not stated (keeps_supply): if it does, none "
                       "of them is planned",
                       footing(c, "island-earth"), true});
        return;
    }
    earth(c, *kept->keeps_supply, all);
    changeover(c, *kept->keeps_supply, all);
    faults(c, all);
    all.push_back({"kept supply: circuits", "a source is not asked for more than it gives",
                   circuits_words(c, *kept), footing(c, "island-load"), true});
}

}  // namespace toft::special
