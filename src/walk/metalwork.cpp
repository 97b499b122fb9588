#include "walk/metalwork.h"

#include "base/text.h"
#include "walk/wording.h"

#include <fmt/format.h>

#include <cstdlib>

namespace toft::walk {

using site::Answer;
using site::ComesFrom;

namespace {

/// What the survey says of a part; null for one that stands for what nobody looked at, and for the
/// building's own frame.
const site::Metalwork* surveyed(const Facts& f, std::size_t part) {
    const std::string& pointer = (*f.parts)[part].pointer;
    constexpr const char* list = "/metalwork/";
    const std::size_t found = pointer.rfind(list);
    if (found == std::string::npos) return nullptr;
    const char* number = pointer.c_str() + found + std::char_traits<char>::length(list);
    const auto index = static_cast<std::size_t>(std::strtoul(number, nullptr, 10));
    return index < f.building->metalwork.size() ? &f.building->metalwork[index] : nullptr;
}

bool is_frame(const Facts& f, std::size_t part) {
    const std::string& pointer = (*f.parts)[part].pointer;
    constexpr const char* end = "/construction";
    constexpr std::size_t length = 13;
    return pointer.size() > length && pointer.compare(pointer.size() - length, length, end) == 0;
}

bool tests_clear(const Facts& f, const site::Metalwork& m) {
    return m.resistance_to_met.known && m.resistance_to_met.standing == site::Standing::measured &&
           m.resistance_to_met.low > f.catalogue->limits.extraneous.value;
}

/// True when what decides about the part is open.
bool part_open(const Facts& f, std::size_t part) {
    const site::Metalwork* m = surveyed(f, part);
    if (!m) {
        return !is_frame(f, part) || !f.building->construction ||
               f.building->stands_in_ground == Answer::unknown;
    }
    if (m->insulating_section != Answer::no) return m->insulating_section == Answer::unknown;
    return m->bonded_at_house == Answer::unknown && m->comes_from != ComesFrom::house;
}

Known part_known(const Facts& f, std::size_t part) {
    if (part_open(f, part)) return Known::unknown;
    const site::Metalwork* m = surveyed(f, part);
    return m && m->insulating_section == Answer::no
               ? known_of(m->resistance_to_met) == Known::measured ? Known::measured : Known::stated
               : Known::stated;
}

}  // namespace

Ruling metal_part(const Facts& f, std::size_t part) {
    const study::MetalPart& p = (*f.parts)[part];
    Ruling r;
    r.known = part_known(f, part);
    const char* bond = p.extraneous
                           ? "to be bonded there to the house's earth, by a main bond that the run "
                             "carries all the way"
                           : "need not be bonded";
    r.supply(Bearing::neutral, bond);
    r.shared(Bearing::neutral, bond);
    if (p.bridges) {
        r.own(Bearing::ruled_out, r.known == Known::unknown
                                      ? "metal may run on to the house's earth and join the two: "
                                        "look, or fit an insulating "
                                        "section where it enters"
                                      : "metal joins the house's earth to the building's: fit an "
                                        "insulating section where it "
                                        "enters");
    } else {
        r.own(Bearing::neutral, p.extraneous
                                    ? "to be bonded there to the building's own electrode, "
                                      "of which it then is a part"
                                    : "need not be bonded");
    }
    return r;
}

namespace {

std::string frame_found(const Facts& f) {
    const site::Building& b = *f.building;
    if (!b.construction) return "construction: not stated: it counts as metal in the ground";
    return site::word(*b.construction) + "; " +
           answer_words("stands in the ground", b.stands_in_ground);
}

std::string test_words(const Facts& f, const site::Metalwork& m) {
    const std::string limit = ohms_words(f.catalogue->limits.extraneous.value);
    const site::Fact<Ohms>& r = m.resistance_to_met;
    if (!r.known) return "not tested: it counts";
    if (r.standing != site::Standing::measured) return "resistance only assumed: it counts";
    return fmt::format("tests at {}, {} {}: {}", ohms_words(r.low),
                       tests_clear(f, m) ? "above" : "not above", limit,
                       tests_clear(f, m) ? "it does not count" : "it counts");
}

}  // namespace

std::string metal_part_found(const Facts& f, std::size_t part) {
    const site::Metalwork* m = surveyed(f, part);
    if (!m) return is_frame(f, part) ? frame_found(f) : "nobody looked: something counts as there";
    const std::string section = answer_words("insulating section", m->insulating_section);
    return fmt::format("from {}{}; {}; {}; {}",
                       m->comes_from == ComesFrom::house    ? "the house"
                       : m->comes_from == ComesFrom::ground ? "the ground"
                                                            : "another building",
                       m->material.empty() ? "" : ", " + m->material, section,
                       answer_words("bonded at the house", m->bonded_at_house), test_words(f, *m));
}

std::vector<std::string> metal_part_changes(const Facts& f, std::size_t part) {
    const std::string& name = (*f.parts)[part].name;
    const study::MetalPart& p = (*f.parts)[part];
    const site::Metalwork* m = surveyed(f, part);
    if (!m) {
        if (!is_frame(f, part)) return {"a look at what metal enters the building"};
        if (!f.building->construction) return {"what the building is made of"};
        return {"a test of the frame against the earthing terminal"};
    }
    std::vector<std::string> changes;
    if (p.extraneous || p.bridges) {
        changes.push_back(fmt::format(
            "an insulating section of {} mm or more in the {} where it enters",
            significant(f.catalogue->limits.insert_length.value.number() * 1000, 3), name));
    }
    if (p.extraneous && !p.bridges && !tests_clear(f, *m)) {
        changes.push_back(fmt::format("a test of the {} against the earthing terminal above {}",
                                      name, ohms_words(f.catalogue->limits.extraneous.value)));
    }
    if (part_open(f, part)) {
        changes.push_back(
            fmt::format("whether the {} is insulated where it enters, and whether it "
                        "is bonded at the house",
                        name));
    }
    return changes;
}

Ohms extraneous_limit(Volts u0, Amperes current, Ohms body) { return u0 / current - body; }

Ruling brings_in(const Facts& f) {
    Ruling r;
    for (std::size_t i = 0; i < f.parts->size(); ++i) {
        if (part_known(f, i) == Known::unknown) r.known = Known::unknown;
    }
    if (!f.extraneous) {
        const char* none =
            "nothing here brings in the potential of the ground: what a voltage on the earth could "
            "be felt against is not within the building";
        r.supply(Bearing::speaks_for, none);
        r.shared(Bearing::speaks_for, none);
        return r;
    }
    r.supply(Bearing::neutral, "serves, once what brings in a potential is bonded at full size");
    r.shared(Bearing::neutral, "serves, once what brings in a potential is bonded at full size");
    r.own(Bearing::neutral, "serves, once what brings in a potential is bonded to it");
    return r;
}

std::string brings_in_found(const Facts& f) {
    const tables::Limits& limits = f.catalogue->limits;
    std::size_t count = 0;
    for (const study::MetalPart& part : *f.parts) count += part.extraneous ? 1 : 0;
    const std::string found =
        count == 0 ? "no part counts"
                   : fmt::format("{} of {} part{} count{}", count, f.parts->size(),
                                 f.parts->size() == 1 ? "" : "s", count == 1 ? "s" : "");
    return fmt::format(
        "{}. A part counts unless it tests above {}: {} V over {} mA is {}, less {} of a body "
        "leaves {}",
        found, ohms_words(limits.extraneous.value), significant(limits.u0.value.number(), 4),
        significant(limits.body_current.value.number() * 1000, 4),
        ohms_words(limits.u0.value / limits.body_current.value),
        ohms_words(limits.body_resistance.value),
        ohms_words(extraneous_limit(limits.u0.value, limits.body_current.value,
                                    limits.body_resistance.value)));
}

std::vector<std::string> brings_in_changes(const Facts& f, const Ruling&) {
    if (!f.extraneous) return {"a metal pipe or steel brought in later"};
    return {fmt::format("a test above {} of every part that counts",
                        ohms_words(f.catalogue->limits.extraneous.value))};
}

Ruling metal_building(const Facts& f) {
    const auto& made_of = f.building->construction;
    const bool metal = made_of && site::metallic(*made_of);
    if (!f.on_tn() || (made_of && !metal)) return no_question();
    Ruling r;
    const bool open = !made_of || f.building->stands_in_ground == Answer::unknown;
    r.known = open ? Known::unknown : Known::stated;
    if (!f.extraneous) {
        r.supply(Bearing::neutral,
                 "the shell is not in touch with the ground and need not be tied "
                 "to the house's earth");
        return r;
    }
    const bool combined = f.system == site::Earthing::tn_c_s;
    const char* why =
        !made_of ? "nobody said what the building is made of: a metal shell in the ground on the "
                   "supply's earth carries current into the ground should the neutral be lost"
        : combined
            ? "a metal building in the ground on a combined earth: if the supply loses its "
              "neutral, current flows through the frame into the ground, and people outside "
              "touch it standing on that ground"
            : "a metal building in the ground on a TN-S earth that may be combined along the way: "
              "current may then flow through the frame into the ground";
    r.supply(Bearing::speaks_against, why);
    if (metal) {
        r.own(Bearing::speaks_for,
              "the frame stays near the voltage of the ground it stands on, and helps the rod");
    }
    return r;
}

std::string metal_building_found(const Facts& f) { return frame_found(f); }

std::vector<std::string> metal_building_changes(const Facts& f, const Ruling& r) {
    if (!f.building->construction) return {"what the building is made of"};
    if (r.known == Known::unknown) return {"whether the metal building stands in the ground"};
    return {"a shell of timber or brick, or one set off the ground"};
}

Ruling bonds(const Facts& f) {
    if (!f.extraneous) return no_question();
    Ruling r;
    r.known = known_of(f.job->intake.supply_neutral);
    const char* duty =
        "one conductor of the run must be of main bonding size from end to end: a core or a "
        "separate conductor; thin armour is not";
    r.supply(Bearing::neutral, duty);
    r.shared(Bearing::neutral, duty);
    r[Choice::added_electrode] = {Bearing::neutral,
                                  "the run must be a main bond, and the electrode's conductor too"};
    r.own(Bearing::neutral, "the run need not bond; the building's bonds end at its own electrode");
    return r;
}

namespace {

/// The smallest copper conductor of the tables that is as large as the bond asked for.
const tables::Conductor* copper_asked(const Facts& f) {
    for (const tables::Conductor& c : f.catalogue->conductors) {
        if (c.metal == tables::Metal::copper && c.section >= f.bond_asked) return &c;
    }
    return nullptr;
}

/// The smallest two-core armoured copper cable whose armour alone is as good as that much copper.
std::string armour_that_bonds(const Facts& f) {
    const tables::Conductor* copper = copper_asked(f);
    if (!copper) return "no armour of the tables does";
    for (const tables::Cable& cable : f.catalogue->cables) {
        if (cable.family != tables::Family::armoured_xlpe_copper || cable.cores != 2) continue;
        if (cable.armour_r20.value > copper->r20.value) continue;
        return fmt::format("armour alone from 2-core {} mm²",
                           significant(cable.section.number(), 4));
    }
    return "no armour of two-core cable does";
}

/// Whether one conductor of that cable is as good as the copper asked for: a core or the armour.
bool cable_bonds(const Facts& f, const tables::Cable& cable) {
    const tables::Make& make = tables::make_of(*f.catalogue, cable);
    if (make.metal == tables::Metal::copper && cable.cpc >= f.bond_asked) return true;
    const tables::Conductor* copper = copper_asked(f);
    return make.armoured && copper && cable.armour_r20.value <= copper->r20.value;
}

const tables::Cable* named_cable(const Facts& f, const site::Leg& leg) {
    for (const tables::Cable& cable : f.catalogue->cables) {
        if (leg.family == tables::family_word(cable.family) && leg.cores == cable.cores &&
            leg.live == cable.section) {
            return &cable;
        }
    }
    return nullptr;
}

/// Of the cables that the survey names, those that carry no such bond, in words.
std::string named_that_do_not_bond(const Facts& f) {
    std::string legs;
    for (const site::Run& run : f.job->runs) {
        if (run.to != f.building->id) continue;
        for (std::size_t i = 0; i < run.legs.size(); ++i) {
            const tables::Cable* cable = named_cable(f, run.legs[i]);
            if (!cable || cable_bonds(f, *cable)) continue;
            legs += fmt::format("{}leg {}", legs.empty() ? "" : ", ", i + 1);
        }
    }
    return legs.empty()
               ? ""
               : "; the cable named does not: a separate conductor beside it (" + legs + ")";
}

}  // namespace

std::string bonds_found(const Facts& f) {
    const std::string asked = fmt::format(
        "the supply asks for {} mm² copper ({})", significant(f.bond_asked.number(), 4),
        f.system == site::Earthing::tn_c_s
            ? "operator's neutral: " + fact_words(f.job->intake.supply_neutral, "mm²")
            : "house's earthing conductor: " + fact_words(f.job->intake.earthing_conductor, "mm²"));
    return fmt::format("{}; a core or separate conductor of that size carries it, {}{}", asked,
                       armour_that_bonds(f), named_that_do_not_bond(f));
}

std::vector<std::string> bonds_changes(const Facts& f, const Ruling& r) {
    std::vector<std::string> changes;
    if (f.system == site::Earthing::tn_c_s && r.known == Known::unknown) {
        changes.emplace_back("the size of the operator's neutral");
    }
    changes.emplace_back("insulating sections or tests that leave nothing to bond");
    return changes;
}

}  // namespace toft::walk
