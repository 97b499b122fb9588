#pragma once
// How the armour ends at an enclosure: clamped in a gland that joins it to earth, or cut back under
// a sleeve and joined to nothing.

#include "drawing/scene.h"

#include <string>

namespace toft::parts {

enum class ArmourEnd { earthed, insulated };

/// The end drawn in the left part of `box`, its title and words right of it.
drawing::Items gland_detail(ArmourEnd end, const std::string& title, const drawing::Box& box);

}  // namespace toft::parts
