#pragma once
// A job from three facts: how far, how much, which earth.

#include "base/outcome.h"
#include "site/job.h"
#include "tables/catalogue.h"

#include <optional>
#include <string>

namespace toft::codec {

struct QuickFacts {
    std::string distance;  ///< metres
    std::string load;      ///< "5kW", "800 W" or "20A"
    std::string earthing;  ///< TN-S, TN-C-S or TT
    std::string method;    ///< how the cable lies; empty for buried direct
};

/// The job of those facts, or faults that name the option at fault.
Outcome<site::Job> quick_job(const QuickFacts& facts, const tables::Catalogue& catalogue);

}  // namespace toft::codec
