#pragma once
// The board of a building that a run is fed from, in place of supply and house: where the run and
// its earth begin, and what is left of the supply there.

#include "diagram/ladder.h"
#include "picture/stage.h"

namespace toft::diagram {

/// True where the stage's scheme feeds its run from a building.
bool fed_from_building(const picture::Stage& stage);

/// "the house", or the name of the building whose board feeds the run.
std::string near_place(const answer::RunAnswer& run);

/// What arrives at that board, and its earth terminal. Precondition: fed_from_building.
void draw_feeder(const picture::Stage& stage, Ladder& ladder);

}  // namespace toft::diagram
