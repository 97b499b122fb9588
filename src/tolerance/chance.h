#pragma once
// The chance that each rule holds, and that all do, while figures vary independently of each other.
// Page: docs/methods/tolerance.md.

#include "rules/rulebook.h"
#include "tolerance/varied.h"

#include <array>

namespace toft::tolerance {

/// A share of all cases, and by how much it may be off: two standard errors of the sampling, and
/// never less than what so many samples can tell.
struct Share {
    double holds = 1;
    double error = 0;
};

struct Chances {
    std::array<Share, rules::rule_count> by_rule{};
    Share all;
    std::array<double, rules::rule_count> largest{};  ///< use that was met with; 0 where not looked
    std::size_t samples = 0;                          ///< 0 where nothing had to be sampled
    std::size_t prepared = 0;  ///< settings prepared for them: as many, or only those of pools
};

/// A scheme looked at again and again.
struct Subject {
    const Place& place;
    const std::vector<Varied>& varied;
    const study::RunScheme& scheme;
};

/// Rules that are `sure` to hold over all ranges are not sampled.
Chances chances(const Subject& subject, const std::array<bool, rules::rule_count>& sure,
                const Wish& wish);

/// The same with every sample prepared as a job of its own: slow, for checks and for settings that
/// cannot be blended.
Chances chances_one_by_one(const Subject& subject, const std::array<bool, rules::rule_count>& sure,
                           std::size_t samples);

}  // namespace toft::tolerance
