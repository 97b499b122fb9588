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
};

struct Swing {
    std::size_t varied = 0;  ///< place in the list of varied figures
    Standing low, high;      ///< the figure at either end

    double size() const {
        return low.headroom < high.headroom ? high.headroom - low.headroom
                                            : low.headroom - high.headroom;
    }
};

struct Tornado {
    Standing likely;
    std::vector<Swing> swings;  ///< the widest first
};

/// The scheme in the job as given.
Standing standing_in(const Place& place, const site::Job& job, const study::RunScheme& scheme);

Tornado tornado_of(const Subject& subject);

}  // namespace toft::tolerance
