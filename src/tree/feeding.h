#pragma once
// Which building feeds which, where several runs lead to one building: of the trees that the runs
// leave open, the one that can be built for least. Trees are looked at in the order of what they
// cost at least, each by all rules (tree/best.h) and only as far as it may be cheaper than the best
// found. Page: docs/methods/feeding.md.

#include "tree/best.h"

#include <string>

namespace toft::tree {

/// A job as built with one choice of runs, and the cheapest way to build it.
struct Feeding {
    std::vector<std::size_t> runs;  ///< places in the job as stated, rising
    site::Job job;                  ///< with these runs only
    Best best;
};

/// What another run to a building, with all else chosen anew around it, comes to.
struct OtherFeed {
    std::size_t run = 0;  ///< place in the job as stated
    double at_least = 0;  ///< no sound way with it costs less; infinite where none is sound
    bool proved = false;  ///< and `way`, where there is one, costs just that
    std::size_t way = 0;  ///< in Feedings::ways
    bool found = false;
};

/// A building with more than one run to it.
struct FeedChoice {
    std::string building;  ///< id
    std::size_t run = 0;   ///< chosen: place in the job as stated
    std::vector<OtherFeed> others;
};

struct Feedings {
    /// The cheapest first; then, by price, the cheapest with each other run to a building and that
    /// with every building fed from the house. Empty where nothing sound was found.
    std::vector<Feeding> ways;
    std::vector<FeedChoice> choices;  ///< empty where nothing sound was found
    bool proved = false;              ///< no tree is cheaper, or none is sound
    bool stopped = false;             ///< by who asked: the best until then
    double at_least = 0;              ///< no sound way costs less, pounds with tax
    long trees = 0;                   ///< that were worked out
    /// Of all of them together, as in Best.
    long considered = 0;
    long choices_of_runs = 0;
    long rounds = 0;
};

struct FeedingLimits {
    long most_trees = 2000;    ///< to work out for the cheapest, before giving up, not proved
    long most_others = 60;     ///< to work out for each other run
    long most_open = 200'000;  ///< beginnings of trees
};

/// `at.job` is the job as stated; it need not leave anything to choose.
Feedings feedings(const Workplace& at, const Asked& asked, const FeedingLimits& limits = {});

/// All trees that the runs of a job leave open, each as places in its list, rising; no more than
/// `most`.
std::vector<std::vector<std::size_t>> all_trees(const site::Job& job, std::size_t most);

}  // namespace toft::tree
