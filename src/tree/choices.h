#pragma once
// What may be chosen for each run of a tree, put as figures that add up along the way: the price of
// each scheme where the runs before leave it the most they can, what it uses up itself, and how
// much the runs before may have used. What can never be part of the cheapest whole is left out.

#include "tree/choice.h"
#include "tree/follow.h"

#include <functional>

namespace toft::tree {

struct RunChoices {
    ArrivingByEarth arriving;  ///< by Earth; of runs fed from others
    std::vector<Choice> choices;
    long considered = 0;  ///< schemes, for all that may arrive
};

/// Quick: as though it did not matter how large fault currents may become behind a run, nor how
/// large a device those behind it may have. What is cheapest then is no dearer than the cheapest
/// there is; if it stands when followed through, it is the cheapest.
enum class Depth : unsigned char { quick, full };

/// Whether the building of each run is to have an electrode of its own, in the order of the tree;
/// none, or left out: either way.
using OwnElectrodes = std::vector<std::optional<bool>>;

/// What choices must have.
struct Wanted {
    Floor floor;
    OwnElectrodes own_electrode;
};

/// Choices of every run, in the order of the tree. `go_on` is asked now and then; where it says no
/// they are not complete, and serve for nothing.
std::vector<RunChoices> choices_of(const Workplace& at, const Tree& tree, const Wanted& wanted,
                                   Depth depth, const std::function<bool()>& go_on = {});

}  // namespace toft::tree
