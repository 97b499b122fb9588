#include "study/scheme.h"

#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::study {

namespace {

std::string joined(std::string words) {
    std::replace(words.begin(), words.end(), ' ', '-');
    return words;
}

std::string device_key(const tables::Device& d) {
    const std::string rating = significant(d.rating.number(), 6);
    if (d.fuse()) return fmt::format("fuse-{}", rating);
    return fmt::format("{}{}-{}kA", d.curve, rating,
                       significant(d.breaking.value.number() / 1000, 4));
}

}  // namespace

const char* earthing_word(BuildingEarthing earthing) {
    switch (earthing) {
        case BuildingEarthing::supply_earth:
            return "supply earth";
        case BuildingEarthing::shared_electrode:
            return "shared electrode";
        case BuildingEarthing::own_electrode:
            return "own electrode";
    }
    return "";
}

const char* protective_word(Protective protective) {
    switch (protective) {
        case Protective::armour:
            return "armour";
        case Protective::core:
            return "core";
        case Protective::core_and_armour:
            return "core and armour";
        case Protective::separate:
            return "separate conductor";
        case Protective::armour_and_separate:
            return "armour and separate conductor";
    }
    return "";
}

std::string run_key(const RunScheme& s) {
    std::string key = fmt::format("{}/{}x{}/{}", joined(earthing_word(s.earthing)), s.cable->cores,
                                  significant(s.cable->section.number(), 6),
                                  joined(protective_word(s.protective)));
    if (s.separate) key += "-" + significant(s.separate->section.number(), 6);
    return key + "/";
}

std::string head_key(const RunScheme& s) {
    std::string key = device_key(*s.device) + "/" + joined(site::word(s.fed_from));
    if (s.rcd) key += fmt::format("/rcd-{}", significant(s.rcd->sensitivity.number() * 1000, 6));
    return key;
}

std::string scheme_key(const RunScheme& s) { return run_key(s) + head_key(s); }

}  // namespace toft::study
