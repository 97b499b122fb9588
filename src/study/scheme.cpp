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
    if (d.fuse()) {
        // BS 88-3 is the usual one and goes without.
        const bool usual = d.standard == "BS 88-3";
        return fmt::format("{}fuse-{}", usual ? "" : joined(d.standard.substr(3)) + "-", rating);
    }
    const char* kind = d.kind == tables::Kind::rcbo ? "rcbo-" : "";
    return kind + fmt::format("{}{}-{}kA", d.curve, rating,
                              significant(d.breaking.value.number() / 1000, 4));
}

/// Short words for families; the usual one of the trade goes without.
const char* family_mark(tables::Family family) {
    static constexpr const char* marks[tables::families] = {
        "", "pvc-", "aluminium-", "flat-", "unarmoured-xlpe-", "unarmoured-pvc-"};
    return marks[static_cast<std::size_t>(family)];
}

std::string stretch_key(const Stretch& s) {
    std::string key = fmt::format("{}{}x{}/{}", family_mark(s.cable->family), s.cable->cores,
                                  significant(s.cable->section.number(), 6),
                                  joined(protective_word(s.protective)));
    if (s.separate) key += "-" + significant(s.separate->section.number(), 6);
    if (s.laid == Laid::kept) return "kept-" + key;
    if (s.laid == Laid::doubled) return "kept-and-another-" + key;
    if (s.parallel > 1) key = fmt::format("{}-of-{}", s.parallel, key);
    return key;
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

const char* laid_word(Laid laid) {
    switch (laid) {
        case Laid::anew:
            return "replace it";
        case Laid::kept:
            return "keep the cable that is there";
        case Laid::doubled:
            return "lay a second like it";
    }
    return "";
}

std::optional<HeadResidual> residual_at_head(const RunScheme& s) {
    if (s.rcd) return HeadResidual{s.rcd->sensitivity, s.rcd->longest, s.rcd->delayed};
    if (!s.device || !s.device->residual) return std::nullopt;
    const tables::Residual& own = *s.device->residual;
    return HeadResidual{own.sensitivity.value, own.times.longest_1, false};
}

std::string run_key(const RunScheme& s) {
    std::string key = joined(earthing_word(s.earthing)) + "/";
    if (s.phases == 3) key += "three-phase/";
    for (const Stretch& stretch : s.laid()) key += stretch_key(stretch) + "/";
    return key;
}

std::string head_key(const RunScheme& s) {
    std::string key = device_key(*s.device) + "/" + joined(site::word(s.fed_from));
    if (s.rcd) key += fmt::format("/rcd-{}", significant(s.rcd->sensitivity.number() * 1000, 6));
    if (s.head_stays) key += "/stays";
    return key;
}

std::string scheme_key(const RunScheme& s) { return run_key(s) + head_key(s); }

}  // namespace toft::study
