#pragma once
// A choice that turned out dearer than it was put to the solver, or at fault, with what the runs
// before it leave: its figures made stricter by what is to blame.

#include "tree/choices.h"

namespace toft::tree {

/// What is asked of which run of the job.
struct Asking {
    std::size_t run = 0;
    Floor floor;
    Depth depth = Depth::full;
};

/// Makes `run.choices[choice]` stricter, or splits a dearer one off it, so that the state
/// `arriving` is no longer promised at its price. Every figure for itself must be to blame, all
/// others at their best: false where only several together are.
bool tighten(const Workplace& at, const Asking& asking, RunChoices& run, std::size_t choice,
             const study::Incoming& arriving);

}  // namespace toft::tree
