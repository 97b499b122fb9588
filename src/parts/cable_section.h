#pragma once
// A cable cut through: flat, round or armoured, cores in their colours with their sleeves, a second
// one where there is a pair, and the conductor laid beside it.

#include "answer/answer.h"
#include "drawing/scene.h"

namespace toft::parts {

/// The cable in the left part of `box`, words right of it.
drawing::Items cable_section(const answer::CableAnswer& cable, const drawing::Box& box);

}  // namespace toft::parts
