#pragma once
// The drawn part of a route plan: buildings, legs, surfaces, electrodes, words, scale, north.

#include "digging/measured.h"
#include "trench/plan.h"

namespace toft::digging {

struct PlanField {
    drawing::Items items;
    double one_to = 1;
    drawing::Point zero;   ///< where the house's 0, 0 stands
    double foot = 0;       ///< nothing reaches below
    bool all_said = true;  ///< everything found room for its words
};

/// Where the field may be, user units.
struct FieldRoom {
    double left = 0, right = 0, top = 0;
    double most_high = 0;
};

PlanField plan_field(const trench::Works& works, const trench::Plan& plan, const FieldRoom& room);

}  // namespace toft::digging
