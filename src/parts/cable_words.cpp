#include "parts/cable_words.h"

#include "parts/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::parts {

namespace {

bool mentions(const std::string& words, const char* word) {
    return words.find(word) != std::string::npos;
}

}  // namespace

Build build_of(const answer::CableAnswer& cable) {
    if (cable.armoured) return Build::armoured;
    return cable.family.rfind("flat", 0) == 0 ? Build::flat : Build::round;
}

bool aluminium(const answer::CableAnswer& cable) { return mentions(cable.family, "aluminium"); }

bool core_serves(const answer::CableAnswer& cable) {
    return mentions(cable.protective_conductor, "core");
}

bool armour_serves(const answer::CableAnswer& cable) {
    return mentions(cable.protective_conductor, "armour");
}

std::string size_words(const answer::CableAnswer& cable) {
    const std::string many = cable.parallel == 2  ? "two "
                             : cable.parallel > 2 ? fmt::format("{} × ", cable.parallel)
                                                  : "";
    if (build_of(cable) == Build::flat) return many + mm2(cable.live_mm2);
    return fmt::format("{}{}-core {}", many, cable.cores, mm2(cable.live_mm2));
}

std::string family_words(const answer::CableAnswer& cable) {
    return cable.family + (cable.parallel > 1 ? " cables" : " cable");
}

std::string thin_core_words(const answer::CableAnswer& cable) {
    if (!cable.cpc_mm2 || *cable.cpc_mm2 == cable.live_mm2) return "";
    return "earth core " + mm2(*cable.cpc_mm2);
}

const answer::StretchAnswer& longest_stretch(const answer::RunAnswer& run) {
    return *std::max_element(run.stretches.begin(), run.stretches.end(),
                             [](const auto& a, const auto& b) { return a.length_m < b.length_m; });
}

bool earth_stops(const answer::SchemeAnswer& scheme) {
    return scheme.building.earthing == "own electrode";
}

}  // namespace toft::parts
