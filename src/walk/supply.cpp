#include "walk/supply.h"

#include "base/limit.h"
#include "base/text.h"
#include "walk/wording.h"

#include <fmt/format.h>

namespace toft::walk {

using site::Earthing;

Ruling supply_system(const Facts& f) {
    Ruling r;
    switch (f.system) {
        case Earthing::tn_c_s:
            r.supply(
                Bearing::neutral,
                "earth and neutral are one conductor in the street: should it break, all metal "
                "on this earth rises towards line voltage, and no fuse or RCD acts");
            r.own(Bearing::neutral,
                  "metal on its own electrode does not follow the supply's earth");
            break;
        case Earthing::tn_s:
            r.supply(Bearing::neutral,
                     "the earth is a conductor of its own: no load current is on it as long as it "
                     "stays separate");
            r.own(Bearing::neutral,
                  "metal on its own electrode does not follow the supply's earth");
            break;
        case Earthing::tt:
            r.shared(
                Bearing::neutral,
                "the operator gives no earth: one electrode and the RCDs protect house and "
                "building, and a fault in one raises the metal of the other until an RCD acts");
            r.own(Bearing::neutral,
                  "with an electrode of its own a fault in the house does not arrive here");
            break;
    }
    return r;
}

std::string supply_found(const Facts& f) {
    const site::Intake& in = f.job->intake;
    const std::string system = site::word(f.system);
    if (f.system == Earthing::tt) {
        const site::Fact<Ohms>& ra = in.electrode.known ? in.electrode : in.ze;
        return fmt::format("{}, as stated; the house's electrode: {}", system, fact_words(ra, "Ω"));
    }
    return fmt::format("{}, as stated; Ze: {}", system, fact_words(in.ze, "Ω"));
}

std::vector<std::string> supply_changes(const Facts& f, const Ruling&) {
    return {fmt::format("proof at the cut-out, or the operator's word, that the supply is not {}",
                        site::word(f.system))};
}

Ruling stays_separate(const Facts& f) {
    if (f.system != Earthing::tn_s) return no_question();
    Ruling r;
    r.known = Known::unknown;
    r.supply(
        Bearing::neutral,
        "many such supplies are joined to the neutral along the way, or will be, without word: "
        "size bonds as for a combined earth, and let places that must not hang on one not hang "
        "on this");
    r.own(Bearing::neutral, "nothing changes for an electrode of its own");
    return r;
}

std::vector<std::string> separate_changes(const Facts&, const Ruling&) {
    return {"the operator's word in writing that this earth is separate all the way and stays so"};
}

namespace {

bool bonds_small(const Facts& f) {
    return !within(f.bond_asked.number(), f.bonding_least.number());
}

bool earthing_small(const Facts& f) {
    return f.system == Earthing::tn_c_s &&
           !within(f.bond_asked.number(), f.earthing_least.number());
}

}  // namespace

Ruling house_bonds(const Facts& f) {
    Ruling r;
    r.known = known_of(f.job->intake.main_bonding);
    r.own(Bearing::neutral, "the house's earth is not extended into the building");
    if (!bonds_small(f) && !earthing_small(f)) {
        const char* good = "what is to be extended is of the size its supply asks for";
        r.supply(Bearing::neutral, good);
        r.shared(Bearing::neutral, good);
        return r;
    }
    if (!bonds_small(f)) r.known = known_of(f.job->intake.earthing_conductor);
    const char* small =
        "the house's bonding or earthing conductor is, or may be, too small: what is extended must "
        "be right first";
    r.supply(Bearing::speaks_against, small);
    r.shared(Bearing::speaks_against, small);
    return r;
}

std::string house_bonds_found(const Facts& f) {
    const site::Intake& in = f.job->intake;
    return fmt::format("asked for: {} mm² copper; main bonding: {}; earthing conductor: {}",
                       significant(f.bond_asked.number(), 4), fact_words(in.main_bonding, "mm²"),
                       fact_words(in.earthing_conductor, "mm²"));
}

std::vector<std::string> house_bonds_changes(const Facts& f, const Ruling& r) {
    if (r.known == Known::unknown || r.known == Known::assumed) {
        return {"a look at the house's main bonding and earthing conductor"};
    }
    if (!bonds_small(f) && !earthing_small(f)) return {};
    return {"larger bonding or a larger earthing conductor at the house"};
}

Ruling added_electrode(const Facts& f) {
    if (!f.on_tn()) return no_question();
    Ruling r;
    r.known = known_of(f.building->electrode.resistance);
    if (r.known == Known::unknown) r.known = Known::assumed;
    const Volts touch = f.catalogue->limits.touch_voltage.value;
    const bool holds = within(volts_without_neutral(f, f.ra_most).number(), touch.number());
    r[Choice::added_electrode] =
        holds
            ? Consequence{Bearing::speaks_for,
                          "low enough to hold this metal down should the supply lose its neutral; "
                          "its conductor must be of bonding size, for it then carries the current "
                          "back, the neighbours' too"}
            : Consequence{Bearing::neutral,
                          "recommended by some, no cure: too high to hold this metal down should "
                          "the supply lose its neutral, and its conductor, which then carries "
                          "current without end, must be of bonding size"};
    return r;
}

std::string added_electrode_found(const Facts& f) {
    const tables::Limits& limits = f.catalogue->limits;
    return fmt::format(
        "electrode of {} Ω at most; with {} A seeking earth through it, as if on one line, metal "
        "would stand at {} V; {} V would take {} Ω",
        significant(f.ra_most.number(), 3), significant(current_seeking_earth(f).number(), 3),
        significant(volts_without_neutral(f, f.ra_most).number(), 3),
        significant(limits.touch_voltage.value.number(), 3),
        significant(electrode_holding(f, limits.touch_voltage.value).number(), 3));
}

std::vector<std::string> added_electrode_changes(const Facts&, const Ruling&) {
    return {"a measured electrode, or steel of a foundation, lower than a rod is foreseen to be"};
}

}  // namespace toft::walk
