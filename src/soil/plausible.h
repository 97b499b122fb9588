#pragma once
// The soils that readings allow beside the best one, and the ranges of its figures.

#include "soil/layer_choice.h"
#include "soil/soil_fit.h"

namespace toft::soil {

struct Allowed {
    std::vector<Range<OhmMetres>> resistivities;
    std::vector<Range<Metres>> thicknesses;
    std::vector<field::Strata> soils;  ///< the best first; at most 16
    Metres reach{};
};

/// Soils at both ends of every figure; soils with ground ten times better and worse as shallow as
/// it would stay unnoticed, the shallower of which is the reach; beside uniform soil also crusts of
/// ten times better and worse soil as thick as would stay unnoticed, and ground three times better
/// and worse.
Allowed soils_allowed(const Curve& curve, const Settled& best, int layers);

}  // namespace toft::soil
