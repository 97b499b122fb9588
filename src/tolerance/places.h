#pragma once
// The figures of a setting as places in memory, so that some can be set anew without preparing it
// again.

#include "study/setting.h"

#include <vector>

namespace toft::tolerance {

/// Every figure of the setting, in an order that is the same for settings of the same shape. The
/// places hold as long as the setting stays where it is and none of its lists changes its length.
std::vector<double*> places_in(study::Setting<Silent>& setting);

}  // namespace toft::tolerance
