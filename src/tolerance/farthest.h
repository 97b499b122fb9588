#pragma once
// How far single figures may go before a rule stops being met, all others over their whole ranges
// at their worse ends. Page: docs/methods/tolerance.md.

#include "tolerance/chance.h"

namespace toft::tolerance {

/// A rule that holds as far as a figure goes, and not beyond.
struct Bound {
    std::size_t rule = 0;  ///< place in the rulebook
    double value = 0;      ///< the last at which it holds, in the unit of the figure
    double times = 1;      ///< of the figure as it is
};

/// One figure of the job and what bounds it.
struct Farthest {
    std::string pointer;
    std::string says;
    std::string unit;
    double now = 0;              ///< as stated, the end nearer to the bounds
    std::vector<Bound> up_to;    ///< the nearest first
    std::vector<Bound> down_to;  ///< … for rules that it breaks by being small
};

/// Length of the whole run, its load as design current, and every other figure that is known.
/// Figures that no rule bounds within a hundredfold are left out.
std::vector<Farthest> farthest_of(const Subject& subject);

}  // namespace toft::tolerance
