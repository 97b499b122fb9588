#pragma once
// The run as the diagram draws it: lengths of one cable each with the legs they lie on, joined in
// boxes where the cable changes.

#include "answer/answer.h"
#include "picture/stage.h"
#include "symbol/strokes.h"

#include <string>
#include <vector>

namespace toft::diagram {

struct Stretch {
    answer::StretchAnswer cable;
    std::vector<std::string> legs;  ///< in words, from the house on
};

struct RunLine {
    std::vector<Stretch> stretches;  ///< from the house on; at least one
    bool earth_stops = false;        ///< the outbuilding has its own: the run's is left unconnected
    std::string near = "the house";  ///< where it begins
};

/// The conductors of the stretch, lines first; cores whose use is none of the three are left out.
std::vector<symbol::Core> cores_of(const answer::CableAnswer& cable);

/// Precondition: the stage has a scheme.
RunLine run_line(const picture::Stage& stage);

}  // namespace toft::diagram
