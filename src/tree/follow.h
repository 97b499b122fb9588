#pragma once
// A whole tree of runs followed from the house outwards: each run judged with what those before it
// leave. This is the judge of every answer: what the search proposes stands only if it passes here.

#include "tree/judge.h"
#include "tree/order.h"

namespace toft::tree {

struct FollowedRun {
    study::RunScheme scheme;
    study::Incoming incoming;  ///< where it is fed from another run
    bool behind = false;       ///< it is
    bool bonds_beyond = false;
    search::Evaluation evaluation;
    Judged judged;
    double alone = 0;  ///< what is to be least of it, without what is bought once for the place
};

struct Followed {
    std::vector<FollowedRun> runs;  ///< in the order of the tree
    bool sound = false;
    bool ways_free = true;          ///< boards of the survey have a way for every run they feed
    std::vector<price::Item> once;  ///< bought once for the whole place
    double net = 0;                 ///< pounds
    double total = 0;               ///< with tax
    double lost = 0;                ///< worth of the energy lost over the years
    double cost = 0;                ///< that is to be least: total, and `lost` if it counts
    double headroom = 1;
    double dependability = 0;
    const rules::RuleInfo* governed_by = nullptr;
    std::size_t governing_run = 0;  ///< place in the order
};

/// The runs of a job, with what of their buildings does not hang on how they are built.
struct Tree {
    std::vector<Place> order;
    std::vector<bool> extraneous;  ///< metalwork at its end, at worst, brings in a potential
};

Tree tree_of(const Workplace& at);

/// `schemes` in the order of the tree.
Followed follow(const Workplace& at, const Tree& tree, const std::vector<study::RunScheme>& schemes,
                const Floor& floor);

}  // namespace toft::tree
