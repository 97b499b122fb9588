#include "ware/pull.h"

#include "base/limit.h"
#include "base/pi.h"
#include "base/text.h"
#include "ware/cable_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::ware {

namespace {

/// Standard acceleration of free fall, m/s2 (ISO 80000-3).
constexpr double free_fall = 9.80665;

/// More are not counted.
constexpr int most_turns = 99;

Newtons least_of(Newtons a, Newtons b) { return a.newtons < b.newtons ? a : b; }

/// To ten newtons: what is needed upwards, what is borne downwards.
std::string needed(Newtons pull) { return fixed(10 * std::ceil(pull.newtons / 10), 0) + " N"; }
std::string borne(Newtons pull) { return fixed(10 * std::floor(pull.newtons / 10), 0) + " N"; }

std::string turns(int count) {
    if (count < 0) return "not even straight";
    return fmt::format("{} quarter turn{}", count, count == 1 ? "" : "s");
}

std::string turns_words(const PullEstimate& pull) {
    if (pull.turns_dry < 0 && pull.turns_wet < 0) {
        return "too much even straight: pull from points between";
    }
    return fmt::format(
        "bends are not stated: between points to pull from at most {} dry, {} with "
        "lubricant",
        turns(pull.turns_dry), turns(pull.turns_wet));
}

}  // namespace

Newtons after_straight(Newtons before, const Sliding& cable, Metres length) {
    return {before.newtons + cable.friction * cable.newtons_per_metre * length.number()};
}

Newtons after_bend(Newtons before, double friction, double radians) {
    return {before.newtons * std::exp(friction * radians)};
}

int quarter_turns(Newtons pull, Newtons limit, double friction) {
    if (!within(pull.newtons, limit.newtons)) return -1;
    if (!(pull.newtons > 0)) return most_turns;
    const double most = std::log(limit.newtons / pull.newtons) / (friction * pi / 2);
    return std::min(most_turns, static_cast<int>(std::floor(most * (1 + limit_tolerance))));
}

Newtons eye_limit(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    const tables::Ware& ware = catalogue.ware;
    const bool copper = tables::make_of(catalogue, cable).metal == tables::Metal::copper;
    const double stress = copper ? ware.eye_copper.value : ware.eye_aluminium.value;
    return {stress * cable.cores * cable.section.number()};
}

Newtons stocking_limit(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    const double mm = cable.overall.value.number() * 1000;
    return least_of({catalogue.ware.stocking.value * mm * mm}, eye_limit(catalogue, cable));
}

std::optional<PullEstimate> pull_of(const tables::Catalogue& catalogue, const tables::Cable& cable,
                                    Metres length) {
    const tables::BuildRow* build = build_of(catalogue, cable);
    if (!build || !(cable.overall.value > metres(0))) return std::nullopt;
    const tables::Ware& ware = catalogue.ware;
    const double weight = build->kg_per_metre * free_fall;
    PullEstimate pull;
    pull.dry = after_straight({}, {ware.friction_dry.value, weight}, length);
    pull.wet = after_straight({}, {ware.friction_wet.value, weight}, length);
    pull.eye = eye_limit(catalogue, cable);
    pull.stocking = stocking_limit(catalogue, cable);
    pull.turns_dry = quarter_turns(pull.dry, pull.stocking, ware.friction_dry.value);
    pull.turns_wet = quarter_turns(pull.wet, pull.stocking, ware.friction_wet.value);
    const int usual = static_cast<int>(ware.duct_bends.value / 90);
    pull.turns_dry = std::min(pull.turns_dry, usual);
    pull.turns_wet = std::min(pull.turns_wet, usual);
    return pull;
}

std::string pull_words(const tables::Catalogue& catalogue, const tables::Cable& cable,
                       Metres length) {
    const auto pull = pull_of(catalogue, cable, length);
    if (!pull) return "its weight is not in the tables: not estimated";
    return fmt::format(
        "{} m straight: about {} dry, {} with lubricant; a stocking may pull {}, an eye on all "
        "cores {}; {}",
        significant(length.number(), 3), needed(pull->dry), needed(pull->wet),
        borne(pull->stocking), borne(pull->eye), turns_words(*pull));
}

}  // namespace toft::ware
