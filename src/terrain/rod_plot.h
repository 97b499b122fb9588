#pragma once
// The plot of resistance against the length of a rod, beside the soil it goes through.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "terrain/sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::terrain {

struct RodPlotOf {
    const answer::SoilAnswer& soil;
    const answer::GroundSideAnswer& side;
    std::optional<double> rod_m;  ///< length of the electrode's rods, where it is known
};

/// Rods that meet a target most cheaply, and the sign that stands for them.
struct MarkedChoice {
    std::string sign;  ///< "1", "2" …
    std::size_t target = 0;
    answer::RodChoiceAnswer choice;
};

/// The cheapest choice of each target, one sign for choices that are the same.
std::vector<MarkedChoice> marked_choices(const answer::GroundSideAnswer& side);

/// Points with a length and resistances that can be drawn, the shortest first.
std::vector<answer::RodPointAnswer> drawable_points(const answer::GroundSideAnswer& side);

/// Nothing for a side without a drawable point.
Drawn rod_plot(const RodPlotOf& of, const Space& room);

}  // namespace toft::terrain
