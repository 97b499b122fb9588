#pragma once
// Where buildings and legs stand on a plan, in metres east and north of the house. Page:
// docs/ground-sheet.md.

#include "trench/works.h"

#include <string>
#include <vector>

namespace toft::trench {

struct Spot {
    Metres east, north;
};

struct BuildingSpot {
    const site::Building* building = nullptr;  ///< of Works::job
    Spot at;
    bool stated = false;
};

/// A straight piece; legs of one trench have the same.
struct LegSpot {
    std::size_t leg = 0;  ///< place in Works::legs
    Spot from, to;
};

struct Plan {
    std::vector<BuildingSpot> buildings;  ///< that some run leads from or to
    std::vector<LegSpot> legs;            ///< as Works::legs
    bool stated = true;                   ///< all positions are the survey's
    std::vector<std::string> says;        ///< what is drawn and what is not; what cannot be
};

/// Runs go straight between their buildings, each leg with its share of the way by its length; legs
/// that share a trench go the same way. The house stands at 0, 0 unless stated. A building whose
/// position is not stated stands as far from the one that feeds it as its run is long, away from
/// where that one is fed.
Plan plan_of(const Works& works);

Metres apart(const Spot& a, const Spot& b);

}  // namespace toft::trench
