#include "rules/earthing_choice.h"

#include "rules/judge.h"

namespace toft::rules {

const RuleInfo earthing_choice_rule{
    .name = "earthing-choice",
    .title = "the building may take its earth from there, given what it is and what stands in it",
    .clause = "411.3.1.2, 542.1.2, ESQCR 9(4), 702, 705, 708, 709, 722.411.4.1",
    .reads =
        "the supply's earthing, the building's use, construction, metalwork, floor and animals",
};

namespace {

using site::Answer;
using site::Use;

/// A use not stated is an ordinary one; the setting says that this was assumed.
Use use_of(const site::Building& b) { return b.use.value_or(Use::other); }

bool movable(const site::Building& b) {
    return use_of(b) == Use::caravan_pitch || use_of(b) == Use::boat_mooring;
}

bool wet_or_bare(const site::Building& b) {
    switch (use_of(b)) {
        case Use::greenhouse:
        case Use::stable:
        case Use::animal_house:
        case Use::pool_house:
        case Use::hot_tub:
            return true;
        default:
            return b.wet_floor == Answer::yes || b.barefoot == Answer::yes ||
                   b.livestock == Answer::yes;
    }
}

bool charges_vehicles(const site::Building& b) {
    for (const site::Circuit& circuit : b.circuits) {
        if (circuit.kind == site::CircuitKind::vehicle_charging) return true;
    }
    return b.vehicle_outdoors == Answer::yes;
}

bool pools(const site::Building& b) {
    return use_of(b) == Use::pool_house || use_of(b) == Use::hot_tub;
}

/// What speaks against the supply's earth in this building; empty when nothing does.
const char* objection(const site::Building& b, bool combined, bool extraneous) {
    if (movable(b)) {
        return "this TN-S supply may be combined along the way, and a combined earth may not serve "
               "a "
               "caravan or boat: ask the operator";
    }
    if (pools(b)) {
        return "people are wet and bare-footed here: a pool or tub on the supply's earth needs a "
               "specialist's design";
    }
    if (!combined) return "";
    if (wet_or_bare(b)) {
        return "wet ground, bare feet or animals: if the supply loses its neutral, metal here "
               "becomes "
               "live to the ground; an own electrode keeps clear of that";
    }
    if (charges_vehicles(b)) {
        return "a vehicle charged in the open must not hang on the supply's combined earth without "
               "one "
               "of the ways 722.411.4.1 allows";
    }
    if (extraneous && b.construction && site::metallic(*b.construction)) {
        return "a metal building in the ground on a combined earth: if the supply loses its "
               "neutral, "
               "current flows through the frame into the ground";
    }
    return "";
}

}  // namespace

template <class L>
Finding<L> earthing_choice(L&, const Case<L>& c) {
    const site::Building& b = *c.setting.building_facts;
    const bool combined = c.setting.supply.system == site::Earthing::tn_c_s;
    if (c.scheme.earthing != study::BuildingEarthing::supply_earth) {
        return plain_finding<L>(earthing_choice_rule, Verdict::meets,
                                "an electrode serves anywhere");
    }
    if (movable(b) && combined) {
        return plain_finding<L>(earthing_choice_rule, Verdict::fails,
                                "the supply's combined earth may not serve a caravan or a boat");
    }
    const char* against = objection(b, combined, c.setting.building.extraneous);
    return plain_finding<L>(earthing_choice_rule, *against ? Verdict::caution : Verdict::meets,
                            against);
}

template Finding<Silent> earthing_choice(Silent&, const Case<Silent>&);
template Finding<Recording> earthing_choice(Recording&, const Case<Recording>&);

}  // namespace toft::rules
