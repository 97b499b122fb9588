#pragma once
// What lies over a trench, hinted at on a strip along the ground line.

#include "drawing/scene.h"
#include "site/words.h"

namespace toft::parts {

/// Turf, tilled bed, paving or gravel; `strip` reaches from above the ground line to below it.
drawing::Items surface_items(site::Surface surface, const drawing::Box& strip);

/// A fence or wall that carries a cable outdoors: posts and a rail, from its top to the ground.
drawing::Items fence(const drawing::Box& box);

}  // namespace toft::parts
