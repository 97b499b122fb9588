#include "walk/facts.h"

#include "earthing/main_bonding.h"

namespace toft::walk {

template <class L>
Facts facts_of(const study::Setting<L>& s) {
    Facts f;
    f.job = s.job;
    f.building = s.building_facts;
    f.catalogue = s.catalogue;
    f.parts = &s.building.parts;
    f.system = s.supply.system;
    f.extraneous = s.building.extraneous;
    f.bridged = s.building.bridged;
    f.reach_least = plain(s.building.reach_least);
    f.ra_most = plain(s.building.ra_most);
    f.house_ra_most = plain(s.supply.ra_most);
    f.ib = plain(s.ib);
    f.bonding_least = plain(s.house.bonding_least);
    f.earthing_least = plain(s.house.earthing_least);
    return f;
}

template Facts facts_of(const study::Setting<Silent>&);
template Facts facts_of(const study::Setting<Recording>&);

Facts all_facts_of(const study::Setting<Silent>& setting) {
    Facts f = facts_of(setting);
    Silent silent;
    f.bond_asked = study::bonding_asked(silent, setting);
    return f;
}

bool says_yes(bool by_use, std::initializer_list<site::Answer> answers) {
    for (const site::Answer a : answers) by_use = by_use || a == site::Answer::yes;
    return by_use;
}

Known known_of(bool by_use, const Facts& facts, std::initializer_list<site::Answer> answers) {
    if (says_yes(by_use, answers)) return Known::stated;
    bool open = !facts.building->use;
    for (const site::Answer a : answers) open = open || a == site::Answer::unknown;
    return open ? Known::unknown : Known::stated;
}

bool has_circuit(const Facts& facts, site::CircuitKind kind) {
    for (const site::Circuit& circuit : facts.building->circuits) {
        if (circuit.kind == kind) return true;
    }
    return false;
}

Amperes current_seeking_earth(const Facts& facts) {
    const site::Intake& in = facts.job->intake;
    if (in.demand.known) return in.demand.high + facts.ib;
    if (in.service_fuse) return most(in.service_fuse->rating, facts.ib);
    const tables::OpenRange* fuse = tables::find_open_range(*facts.catalogue, "service_fuse");
    return most(amperes(fuse ? fuse->high.value : 100), facts.ib);
}

Ohms electrode_holding(const Facts& facts, Volts limit) {
    const tables::Limits& limits = facts.catalogue->limits;
    const Volts driving = facts.job->intake.u0 * limits.c_max.value;
    const Amperes current = current_seeking_earth(facts);
    return facts.job->intake.u0 * (limit / (driving - limit)) / current;
}

Volts volts_without_neutral(const Facts& facts, Ohms electrode) {
    const Volts u0 = facts.job->intake.u0;
    const Volts driving = u0 * facts.catalogue->limits.c_max.value;
    return driving * (electrode / (electrode + u0 / current_seeking_earth(facts)));
}

}  // namespace toft::walk
