#include "walk/apart.h"

#include "base/limit.h"
#include "base/text.h"
#include "walk/wording.h"

#include <fmt/format.h>

namespace toft::walk {

Ruling within_reach(const Facts& f) {
    Ruling r;
    r.known = known_of(f.building->reach_of_house_earth);
    const char* one = "one earth serves both: what is in reach is on the same";
    r.supply(Bearing::neutral, one);
    r.shared(Bearing::neutral, one);
    if (within(f.catalogue->limits.reach.value.number(), f.reach_least.number())) {
        r.own(Bearing::neutral, "nothing on another earth can be touched together with this one's");
    } else {
        r.own(
            Bearing::ruled_out,
            r.known == Known::unknown
                ? "nobody said how near the house's earth comes: within arm's reach a person could "
                  "bridge the two"
                : "something on the house's earth is, or may be, within arm's reach: a person "
                  "could bridge the two");
    }
    return r;
}

std::string within_reach_found(const Facts& f) {
    return fmt::format("nearest thing on the house's earth: {}; arm's reach is {} m",
                       fact_words(f.building->reach_of_house_earth, "m"),
                       significant(f.catalogue->limits.reach.value.number(), 3));
}

std::vector<std::string> within_reach_changes(const Facts& f, const Ruling& r) {
    if (r.known == Known::unknown || r.known == Known::assumed) {
        return {
            "the distance to the nearest thing on the house's earth, or a neighbour's, measured"};
    }
    if (within(f.catalogue->limits.reach.value.number(), f.reach_least.number())) {
        return {"a tap, light or lead on the house's earth brought nearer"};
    }
    return {"what is within reach moved away, replaced by plastic or put on the building's earth"};
}

Ohms largest_electrode(const Facts& f) {
    const tables::Limits& limits = f.catalogue->limits;
    return limits.touch_voltage.value / limits.residual_socket.value;
}

namespace {

constexpr const char* too_high =
    "it is, or is foreseen, higher than the RCDs allow: the metal would stay live at more than the "
    "touch voltage";
constexpr const char* may_drift = "it may not stay low through a dry summer";

bool is_rock(const Facts& f) { return f.job->ground.soil == "rock"; }

/// Its resistance was read, by one test or another.
bool tested(const site::Electrode& e) { return e.resistance.known || !e.spikes.empty(); }

/// How the own electrode is known: tested, or foreseen from soil that was measured, named or not.
Known electrode_known(const Facts& f) {
    const site::Electrode& e = f.building->electrode;
    if (e.resistance.known) return known_of(e.resistance);
    if (!e.spikes.empty()) return Known::measured;
    const site::Ground& g = f.job->ground;
    const bool soil = g.resistivity.known || !g.soil.empty() || !g.layers.empty() ||
                      !g.pins.empty() || !g.rods.empty();
    return soil ? Known::assumed : Known::unknown;
}

}  // namespace

Ruling ground(const Facts& f) {
    Ruling r;
    r.known = electrode_known(f);
    const double ra = f.ra_most.number();
    if (!within(ra, largest_electrode(f).number())) {
        r.own(Bearing::ruled_out, too_high);
    } else if (!tested(f.building->electrode) && is_rock(f)) {
        r.own(Bearing::speaks_against,
              "no rod can be counted on in rock: a wire in a trench or the steel of a foundation "
              "must be tried first");
    } else if (!tested(f.building->electrode)) {
        r.own(Bearing::speaks_against,
              r.known == Known::unknown
                  ? "nobody said what the ground is: drive a rod and test it before it is promised"
                  : "it is foreseen from the soil and not tested: drive and test it before it is "
                    "promised");
    } else if (ra > f.catalogue->limits.electrode_stable.value.number()) {
        r.own(Bearing::speaks_against, may_drift);
    } else {
        r.own(Bearing::neutral, "low enough for the RCDs, and to last");
    }
    return r;
}

std::string ground_found(const Facts& f) {
    const site::Electrode& e = f.building->electrode;
    const site::Ground& g = f.job->ground;
    std::string soil =
        fmt::format("soil: {}; resistivity: {}", g.soil.empty() ? "not stated" : g.soil,
                    fact_words(g.resistivity, "Ω m"));
    if (!g.layers.empty()) soil = "soil: layers stated";
    if (!g.rods.empty()) soil = "soil: read with driven rods";
    if (!g.pins.empty()) soil = "soil: read with four pins";
    if (tested(e)) soil = "the electrode was tested";
    if (e.resistance.known) soil = "the electrode: " + fact_words(e.resistance, "Ω");
    const std::string electrode = fmt::format("{}; {} at most", soil, ohms_words(f.ra_most));
    return fmt::format("{}; the RCDs allow {}, above {} it may not last", electrode,
                       ohms_words(largest_electrode(f)),
                       ohms_words(f.catalogue->limits.electrode_stable.value));
}

std::vector<std::string> ground_changes(const Facts& f, const Ruling& r) {
    if (tested(f.building->electrode)) return {"a deeper or further electrode"};
    std::vector<std::string> changes{"the electrode driven and tested"};
    if (r[Choice::own_electrode].bearing != Bearing::neutral) {
        changes.emplace_back("longer rods, more of them, or wire in the trench");
    }
    return changes;
}

Ruling house_electrode(const Facts& f) {
    if (f.on_tn()) return no_question();
    Ruling r;
    const site::Intake& in = f.job->intake;
    r.known = known_of(in.electrode.known ? in.electrode : in.ze);
    const double ra = f.house_ra_most.number();
    if (!within(ra, largest_electrode(f).number())) {
        r.shared(Bearing::ruled_out, too_high);
    } else if (r.known == Known::unknown) {
        r.shared(Bearing::speaks_against, "nobody has tested it: test it before more hangs on it");
    } else if (ra > f.catalogue->limits.electrode_stable.value.number()) {
        r.shared(Bearing::speaks_against, may_drift);
    } else {
        r.shared(Bearing::neutral, "low enough for the RCDs, and to last");
    }
    r.own(Bearing::neutral, "does not rest on the house's electrode");
    return r;
}

std::string house_electrode_found(const Facts& f) {
    const site::Intake& in = f.job->intake;
    return fmt::format("the house's electrode: {}; the RCDs allow {}",
                       fact_words(in.electrode.known ? in.electrode : in.ze, "Ω"),
                       ohms_words(largest_electrode(f)));
}

std::vector<std::string> house_electrode_changes(const Facts&, const Ruling& r) {
    if (r.known == Known::measured) return {"another test in a dry summer"};
    return {"the house's electrode tested"};
}

}  // namespace toft::walk
