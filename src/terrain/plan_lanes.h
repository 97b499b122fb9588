#pragma once
// The plan of two earths: true to scale along the line between them, one lane across for each thing
// that joins them or comes near.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "terrain/sheet.h"

#include <string>

namespace toft::terrain {

struct PlanOf {
    const answer::SeparationAnswer& separation;
    std::string outbuilding;  ///< its name
    double reach_m = 0;       ///< of an arm
};

/// Lanes drawn; what more there is stands in the words.
std::size_t lanes_drawn(const answer::SeparationAnswer& separation, bool phone);

Drawn separation_plan(const PlanOf& of, const Space& room);

/// A piece of a bridge's line as the plan draws it, for the list: runs on, ends short of the
/// building, or not known; `sign_wide` wide.
drawing::Items bridge_sign(const answer::BridgeAnswer& bridge, std::size_t number);

}  // namespace toft::terrain
