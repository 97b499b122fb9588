#pragma once
// What the tables know of residual current protection of circuits: who asks for it and how
// sensitive, which type a load asks for, what usually leaks, and on what advice stands.

#include "tables/rulebook.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

/// Whose word a reason is: the same four things as of a step of the earthing decision.
using Footing = EarthingBasis;

/// A reason for residual current protection and the largest rating that serves it.
struct GuardNeed {
    Footing footing;
    Amperes sensitivity{};
};

/// Types of residual current device by kind of circuit, in the job's words for both.
struct LoadType {
    std::string kind;
    std::string plain;          ///< no drive or converter feeds the load
    std::string drive_one;      ///< one does, on one phase
    std::string drive_three;    ///< … on three
    bool drive_unsaid = false;  ///< where nobody said, one is taken to be there
    const Citation* citation = nullptr;
};

/// Standing current in the protective conductor of a circuit of that kind.
struct LoadLeakage {
    std::string kind;
    Cited<Amperes> low;
    Cited<Amperes> high;
};

struct Guard {
    std::vector<GuardNeed> needs;
    std::vector<Footing> footings;
    std::vector<LoadType> types;
    std::vector<LoadLeakage> leakages;
};

/// The row of that key or kind, or null.
const GuardNeed* find_need(const Guard& guard, std::string_view key);
const Footing* find_footing(const Guard& guard, std::string_view key);

}  // namespace toft::tables
