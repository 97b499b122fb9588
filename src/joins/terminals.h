#pragma once
// The two ends of a stretch: which enclosure it is, what stands in it, and on what each conductor
// is put there.

#include "joins/conductor.h"
#include "picture/stage.h"

#include <cstddef>
#include <string>
#include <vector>

namespace toft::joins {

enum class Side { near, far };

/// What surrounds some of the conductors' terminals.
enum class Around { nothing, lines, lines_and_neutral };

struct End {
    Side side = Side::near;
    std::string name;  ///< "House", "Board of Garage", "Joint box 1"
    Around around = Around::nothing;
    std::string lines;    ///< what the lines are put on: "32 A breaker"
    std::string neutral;  ///< "neutral bar"
    std::string earth;    ///< "main earthing terminal"
};

/// The stretch's end on that side. Preconditions: the stage has a scheme with that stretch.
End end_of(const picture::Stage& stage, std::size_t stretch, Side side);

/// What the conductor is put on there, or that it is kept from everything.
std::string terminal_words(const End& end, const Conductor& conductor);

/// "the house", or "the board of Garage" for a run that another building feeds: with a capital
/// where it begins a line.
std::string near_name(const picture::Stage& stage);

/// What stands at the head of the run and where it is fed from, line by line.
std::vector<std::string> head_words(const picture::Stage& stage);

/// The outbuilding's board, line by line: main switch and residual current devices.
std::vector<std::string> far_board_words(const picture::Stage& stage);

}  // namespace toft::joins
