#pragma once
// The cheapest way to build all runs of a tree at once. The tree is put to a solver as figures that
// add up along the way (spread), which bounds the price from below; what it proposes is followed
// through by every rule, and where that finds it dearer or at fault, the figures are made stricter
// by just as much and the solver is asked again. Page: docs/methods/tree.md.

#include "tree/choices.h"

#include <functional>

namespace toft::tree {

struct Progress {
    long rounds = 0;          ///< proposals followed through
    double price = no_limit;  ///< of the best found so far
    double at_least = 0;
    Floor floor;  ///< what is asked of every way looked for
};

struct Asked {
    Floor floor;
    OwnElectrodes own_electrode;
    /// Proposals to follow through before giving up, not proved.
    long most_rounds = 400;
    /// Where quickly made choices do not stand, go on with all; else stop there, not proved.
    bool thorough = true;
    /// Only ways below this price are asked for, pounds with tax. Where none is found and it is
    /// proved, none is below it.
    double below = no_limit;
    /// Asked now and then; once it says no, no more is looked for.
    std::function<bool(const Progress&)> go_on;
};

struct Best {
    std::optional<Followed> found;  ///< none: nothing sound was found
    bool proved = false;            ///< nothing is cheaper, or nothing is sound
    bool stopped = false;           ///< by who asked: `found` is the best so far
    double at_least = 0;            ///< no sound way costs less, pounds with tax, and with the
                                    ///< energy lost over the years where that counts
    long considered = 0;            ///< schemes of single runs
    long choices = 0;               ///< of them, those that could be part of the best
    long rounds = 0;
};

/// The runs of the job must form a tree rooted at the origin.
Best cheapest(const Workplace& at, const Tree& tree, const Asked& asked);

}  // namespace toft::tree
