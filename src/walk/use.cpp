#include "walk/use.h"

#include "base/limit.h"
#include "base/text.h"
#include "walk/wording.h"

#include <fmt/format.h>

namespace toft::walk {

using site::Answer;
using site::Use;

namespace {

/// Metal of a vehicle charged in the open, the neutral lost; no limit for buildings.
Volts vehicle_touch(const Facts& f) {
    return f.catalogue->shock.limit(tables::Threshold::charging_point).limit.value;
}

/// Words where a fact is known to be so, where it is not known, on a combined and a separate earth.
struct Words {
    const char* combined;
    const char* separate;
    const char* unknown;
    const char* own;
};

/// What speaks against the supply's earth when the thing is so, or when nobody said that it is not.
Ruling against_supply(const Facts& f, Known known, bool is_so, const Words& words) {
    Ruling r;
    r.known = known;
    if (!is_so && known != Known::unknown) {
        r.supply(Bearing::neutral, "nothing of the kind here");
        return r;
    }
    if (!f.on_tn()) {
        if (is_so) r.own(Bearing::speaks_for, words.own);
        r.shared(Bearing::neutral,
                 "allowed; a fault anywhere else on that electrode then shows here until its RCD "
                 "acts");
        return r;
    }
    const bool combined = f.system == site::Earthing::tn_c_s;
    r.supply(Bearing::speaks_against, !is_so     ? words.unknown
                                      : combined ? words.combined
                                                 : words.separate);
    if (is_so) r.own(Bearing::speaks_for, words.own);
    return r;
}

bool movable_use(const Facts& f) {
    return f.used_as(Use::caravan_pitch) || f.used_as(Use::boat_mooring);
}

bool animal_use(const Facts& f) { return f.used_as(Use::stable) || f.used_as(Use::animal_house); }

bool tub(const Facts& f) {
    return f.used_as(Use::pool_house) || f.used_as(Use::hot_tub) ||
           has_circuit(f, site::CircuitKind::hot_tub);
}

bool charger(const Facts& f) { return has_circuit(f, site::CircuitKind::vehicle_charging); }

}  // namespace

Ruling movable(const Facts& f) {
    if (movable_use(f) && f.system == site::Earthing::tn_c_s) {
        Ruling r;
        r.supply(
            Bearing::ruled_out,
            "the supply's combined earth may not serve a caravan or a boat: the law forbids it "
            "to the operator, and an added electrode does not lift that");
        r.own(Bearing::required, "what is left for a caravan or a boat on such a supply");
        return r;
    }
    return against_supply(
        f, known_of(movable_use(f), f, {}), movable_use(f),
        {"",
         "this TN-S supply may be combined along the way, and a combined earth may not serve a "
         "caravan or boat: ask the operator",
         "nobody said what the building is: a caravan or boat may not, a pool, tub or stable "
         "should "
         "not, hang on this earth without more thought",
         "a caravan or boat is best kept off the operator's earth altogether"});
}

std::string movable_found(const Facts& f) { return use_words(*f.building); }

std::vector<std::string> movable_changes(const Facts& f, const Ruling& r) {
    if (r.known == Known::unknown) return {"what the building is and will be used for"};
    if (movable_use(f)) return {"a building that stands for good in place of the caravan or boat"};
    return {"a caravan or boat plugged in here"};
}

Ruling animals(const Facts& f) {
    const bool so = says_yes(animal_use(f), {f.building->livestock});
    const Known known = known_of(animal_use(f), f, {f.building->livestock});
    Ruling r = against_supply(
        f, known, so,
        {"animals feel a few volts between metal and ground: if the supply loses its neutral, "
         "metal "
         "here becomes live to the ground they stand on; an own electrode keeps clear of that",
         "animals feel a few volts between metal and ground, and this TN-S supply may be combined "
         "along the way: an own electrode keeps clear of a neutral lost in the street",
         "nobody said whether animals are kept here: they feel a few volts that the supply's earth "
         "may bring",
         "no voltage of the street or of another building arrives where the animals stand; bond "
         "all metal and mesh within their reach to it"});
    if (!f.on_tn() && (so || known == Known::unknown)) {
        r.shared(Bearing::speaks_against,
                 so ? "animals feel a few volts, and a fault anywhere else on that electrode lifts "
                      "the metal here until its RCD acts: an electrode of their own, apart from "
                      "it, keeps clear of that"
                    : "nobody said whether animals are kept here: they feel a few volts that a "
                      "fault anywhere else on that electrode may bring");
    }
    return r;
}

std::string animals_found(const Facts& f) {
    return use_words(*f.building) + "; " + answer_words("animals kept", f.building->livestock);
}

std::vector<std::string> animals_changes(const Facts&, const Ruling& r) {
    if (r.known == Known::unknown) return {"whether animals are kept here"};
    return {r[Choice::own_electrode].bearing == Bearing::speaks_for ? "no animals kept here"
                                                                    : "animals kept here"};
}

namespace {

bool wet_use(const Facts& f) { return f.used_as(Use::greenhouse) || animal_use(f); }

}  // namespace

Ruling wet_ground(const Facts& f) {
    const site::Building& b = *f.building;
    const bool so = says_yes(wet_use(f), {b.wet_floor, b.barefoot});
    return against_supply(
        f, known_of(wet_use(f), f, {b.wet_floor, b.barefoot}), so,
        {"wet ground or bare feet: if the supply loses its neutral, metal here becomes live to the "
         "ground people stand on; an own electrode keeps clear of that",
         "wet ground or bare feet, and this TN-S supply may be combined along the way: an own "
         "electrode keeps clear of a neutral lost in the street",
         "nobody said whether the floor is wet or feet are bare: there a voltage on the supply's "
         "earth finds a good path through a person",
         "metal here stays near the voltage of the ground people stand on"});
}

std::string wet_ground_found(const Facts& f) {
    const site::Building& b = *f.building;
    return use_words(b) + "; " + answer_words("wet floor", b.wet_floor) + "; " +
           answer_words("bare feet", b.barefoot);
}

std::vector<std::string> wet_ground_changes(const Facts&, const Ruling& r) {
    if (r.known == Known::unknown) return {"whether the floor is wet or people go barefoot"};
    if (r[Choice::own_electrode].bearing == Bearing::speaks_for) {
        return {"a dry floor that insulates, and shoes"};
    }
    return {"a floor that gets wet, or bare feet"};
}

Ruling pool_or_tub(const Facts& f) {
    return against_supply(
        f, known_of(tub(f), f, {}), tub(f),
        {"people are wet and bare-footed here: a pool or tub on the supply's earth needs a "
         "specialist's design",
         "people are wet and bare-footed here: a pool or tub on the supply's earth needs a "
         "specialist's design",
         "nobody said what the building is: a pool or tub on the supply's earth needs a "
         "specialist's design",
         "wet, bare-footed people are clear of the street's voltage; the zones of section 702 go "
         "for this earth too"});
}

std::string pool_found(const Facts& f) {
    return use_words(*f.building) +
           (has_circuit(f, site::CircuitKind::hot_tub) ? "; a circuit for a tub" : "");
}

std::vector<std::string> pool_changes(const Facts& f, const Ruling& r) {
    if (r.known == Known::unknown) return {"whether a pool or tub is there or to come"};
    return {tub(f) ? "the design of a specialist for pools" : "a tub set up here later"};
}

Ruling charging(const Facts& f) {
    const Answer outdoors = f.building->vehicle_outdoors;
    const bool so = says_yes(charger(f), {outdoors});
    const Known known = so                            ? Known::stated
                        : outdoors == Answer::unknown ? Known::unknown
                                                      : Known::stated;
    Ruling r = against_supply(
        f, known, so,
        {"a vehicle charged in the open must not hang on the supply's combined earth without one "
         "of "
         "the ways 722.411.4.1 allows",
         "a vehicle charged in the open should not hang on a TN-S earth that may be combined along "
         "the way without one of the ways 722.411.4.1 allows",
         "nobody said whether a vehicle is charged in the open: it must not hang on a combined "
         "earth without one of the ways 722.411.4.1 allows",
         "the vehicle's body stays near the voltage of the ground beside it"});
    if (!so || !f.on_tn()) return r;
    const Ohms needed = electrode_holding(f, vehicle_touch(f));
    if (within(f.ra_most.number(), needed.number())) {
        r[Choice::added_electrode] = {Bearing::speaks_for,
                                      "low enough for the second of the ways of 722.411.4.1"};
    }
    return r;
}

std::string charging_found(const Facts& f) {
    const Volts limit = vehicle_touch(f);
    std::string text = charger(f) ? "a circuit that charges vehicles; " : "";
    text += answer_words("a vehicle charged in the open", f.building->vehicle_outdoors);
    if (!f.on_tn()) return text;
    return text + fmt::format("; an added electrode would need {} Ω to hold {} V",
                              significant(electrode_holding(f, limit).number(), 3),
                              significant(limit.number(), 3));
}

std::vector<std::string> charging_changes(const Facts& f, const Ruling& r) {
    if (!says_yes(charger(f), {f.building->vehicle_outdoors})) {
        return {r.known == Known::unknown ? "whether a vehicle is to be charged in the open"
                                          : "a vehicle charged in the open later"};
    }
    if (!f.on_tn()) return {};
    const auto volts = significant(vehicle_touch(f).number(), 3);
    return {
        fmt::format("a three-phase supply loaded so evenly that metal stays under {} V", volts),
        fmt::format("an added electrode low enough to hold metal under {} V", volts),
        fmt::format("a device that takes off line, neutral and protective conductor of the vehicle "
                    "when its earth passes {} V",
                    volts),
        "a device that does so when the voltage of a single-phase supply leaves its band",
        "another way, by its designer's own proof"};
}

}  // namespace toft::walk
