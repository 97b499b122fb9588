#include "joins/conductor.h"

#include "parts/cable_words.h"
#include "parts/core_section.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::joins {

namespace {

Ending ending(bool joined) { return joined ? Ending::joined : Ending::isolated; }

/// "line 2" is L2, counted from 1; "line" is L.
int number_in(const std::string& use) {
    const char last = use.empty() ? ' ' : use.back();
    return last >= '1' && last <= '3' ? last - '0' : 0;
}

Conductor core_of(const answer::CableAnswer& cable, const answer::CoreAnswer& core, bool stops) {
    Conductor one;
    one.core = core;
    one.words = parts::core_words(core);
    one.alike = cable.parallel;
    if (core.use == "neutral") {
        one.kind = Kind::neutral;
        one.tag = "N";
    } else if (core.use == "protective") {
        one.kind = Kind::core;
        one.tag = "PE";
        if (cable.cpc_mm2) one.words += ", " + parts::mm2(*cable.cpc_mm2);
        if (!parts::core_serves(cable)) {
            one.words += ": joined so that it is not left loose, not counted on";
        }
        one.far = ending(!stops);
    } else {
        const int number = number_in(core.use);
        one.line = number > 0 ? number - 1 : 0;
        one.tag = number > 0 ? fmt::format("L{}", number) : "L";
    }
    return one;
}

/// "joined here, isolated there" in so many words.
std::string armour_words(const answer::CableAnswer& cable) {
    if (cable.armour_near && cable.armour_far) {
        return parts::armour_serves(cable) ? "protective conductor: joined at both ends"
                                           : "joined at both ends";
    }
    if (cable.armour_near) return "joined at the near end only, ISOLATED at the far end";
    if (cable.armour_far) return "ISOLATED at the near end, joined at the far end only";
    return "ISOLATED at both ends";
}

}  // namespace

std::vector<Conductor> conductors_of(const answer::SchemeAnswer& scheme, std::size_t stretch) {
    const answer::StretchAnswer& cable = scheme.run.stretches.at(stretch);
    const bool last = stretch + 1 == scheme.run.stretches.size();
    const bool stops = last && parts::earth_stops(scheme);
    std::vector<Conductor> all;
    for (const answer::CoreAnswer& core : cable.core_list) {
        all.push_back(core_of(cable, core, stops));
    }
    if (cable.armoured) {
        Conductor armour{Kind::armour, "armour", {}, armour_words(cable)};
        armour.alike = cable.parallel;
        armour.near = ending(cable.armour_near);
        armour.far = ending(cable.armour_far);
        all.push_back(armour);
    }
    if (cable.separate_mm2) {
        Conductor beside{Kind::separate, "PE", {"green-yellow", "", "protective"}, ""};
        beside.words = "green-and-yellow, " + parts::mm2(*cable.separate_mm2) +
                       " copper, laid beside the cable";
        beside.far = ending(!stops);
        all.push_back(beside);
    }
    return all;
}

}  // namespace toft::joins
