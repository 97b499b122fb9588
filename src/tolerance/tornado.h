#pragma once
// What each varied figure alone does to the headroom of a scheme, from one end of its range to the
// other, all others as they are likeliest. Page: docs/methods/tolerance.md.

#include "tolerance/chance.h"

namespace toft::tolerance {

/// A scheme with all figures at one value each.
struct Standing {
    double headroom = 1;                           ///< 1 less the largest use of a graded rule
    const rules::RuleInfo* governed_by = nullptr;  ///< that rule
    bool sound = true;                             ///< every rule holds
    std::array<double, rules::rule_count> use{};   ///< share of its limit, by rule; 0 without one
};

struct Swing {
    std::size_t varied = 0;  ///< place in the list of varied figures
    Standing low, high;      ///< the figure at either end
    std::size_t moved =
        rules::rule_count;  ///< graded rule whose share moves most; rule_count: none

    /// By how much that rule's share moves.
    double use_moved() const {
        if (moved == rules::rule_count) return 0;
        return low.use[moved] < high.use[moved] ? high.use[moved] - low.use[moved]
                                                : low.use[moved] - high.use[moved];
    }

    double size() const {
        return low.headroom < high.headroom ? high.headroom - low.headroom
                                            : low.headroom - high.headroom;
    }
};

struct Tornado {
    Standing likely;
    std::vector<Swing> swings;  ///< the widest first; of those alike the one whose rule moves most
};

/// The scheme in the job as given.
Standing standing_in(const Place& place, const site::Job& job, const study::RunScheme& scheme);

Tornado tornado_of(const Subject& subject);

}  // namespace toft::tolerance
