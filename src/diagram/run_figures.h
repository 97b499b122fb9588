#pragma once
// The figures that stand beside the run and at its ends.

#include "answer/answer.h"
#include "diagram/note.h"

#include <vector>

namespace toft::diagram {

/// At the device: rating, breaking capacity, the fault currents it may meet.
std::vector<Figure> near_figures(const answer::RunAnswer& run);

/// Along the cable: load current, rating as laid, voltage drop, resistance of the loop. For a
/// `whole_run` of several cables its length too, and which leg's rating is the least.
std::vector<Figure> cable_figures(const answer::FigureAnswers& figures, bool whole_run = false);

/// At the cable's far end: loop impedance and what it is judged by. Where the building has its own
/// electrode it is the loop of a fault to the run's armour.
std::vector<Figure> loop_figures(const answer::SchemeAnswer& scheme);

/// At the outbuilding's board: fault currents, and what clears a fault to earth (to the armour
/// where the building has its own electrode).
std::vector<Figure> fault_figures(const answer::SchemeAnswer& scheme);

}  // namespace toft::diagram
