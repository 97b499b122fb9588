#pragma once
// The figures that stand beside the run and at its ends.

#include "answer/answer.h"
#include "diagram/note.h"

#include <vector>

namespace toft::diagram {

/// At the device: rating, breaking capacity, the fault currents it may meet.
std::vector<Figure> near_figures(const answer::RunAnswer& run);

/// Along the cable: load current, rating as laid, voltage drop, resistance of the loop.
std::vector<Figure> cable_figures(const answer::FigureAnswers& figures);

/// At the far end: loop impedance with its limit, fault currents, what clears a fault to earth.
/// Where the building has its own electrode those to earth are those to the run's armour.
std::vector<Figure> far_figures(const answer::SchemeAnswer& scheme);

}  // namespace toft::diagram
