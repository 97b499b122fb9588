#pragma once
// One scheme of one run while the figures of the survey are other than stated: the worst that each
// rule can meet, the chance that it holds, what moves the headroom most, and how far single figures
// may go. Page: docs/methods/tolerance.md.

#include "tolerance/farthest.h"
#include "tolerance/tornado.h"

namespace toft::tolerance {

/// A rule over all ranges.
struct RuleOver {
    const rules::RuleInfo* rule = nullptr;
    bool limited = false;  ///< it has a figure against a limit
    double likely = 0;     ///< share of the limit with every figure as it is likeliest
    double worst = 0;      ///< the most it can come to: every figure at the end that is worse
    double reached = 0;    ///< the most that was met with at one set of figures
    bool holds_at_worst = false;
    bool holds_at_likely = false;
    Share chance;
    const char* says = "";  ///< at the worst, where the figures alone do not tell
};

/// An open fact that does not vary and stays at its worse end.
struct Stays {
    std::string pointer;
    std::string says;
};

struct Tolerance {
    std::vector<Varied> varied;
    std::vector<Stays> stays;
    std::vector<RuleOver> rules;  ///< by the rulebook; those that never fail left out
    Share robust;                 ///< chance that every rule holds
    Tornado tornado;
    std::vector<Farthest> farthest;
    std::size_t samples = 0;
    std::size_t prepared = 0;
};

/// Looks at `scheme`, buildable on that run.
Tolerance tolerance_of(const Place& place, const study::RunScheme& scheme, const Wish& wish);

}  // namespace toft::tolerance
