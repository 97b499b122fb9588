#pragma once
// Jobs of several runs, buildings fed from buildings, and a shop with so little in it that every
// way to build all of them can be tried.

#include "price/book.h"
#include "site/job.h"
#include "tables/catalogue.h"
#include "tree/judge.h"

#include <limits>
#include <vector>

namespace toft::support {

/// The embedded tables with a few sizes of one cable, a few breakers and fuses, and what they cost
/// in the book that comes with the program.
struct SmallShop {
    tables::Catalogue catalogue;
    price::Book book;
};
const SmallShop& small_shop();

inline constexpr int the_house = -1;

/// House "house" as in the plain job; building "b0" fed over run "r0" from the building whose
/// number stands in `fed_from`, and so on: 20 m buried direct and 8 A each.
site::Job tree_job(const std::vector<int>& fed_from);

/// A chain or a star of two or three runs, the same for the same seed on every machine: metalwork
/// that asks for bonding, boards without enough ways, final circuits, TT or TN, one phase or three.
site::Job random_tree_job(unsigned seed);

/// The same with one to three more runs that may be built instead, some in a shared trench.
site::Job random_choice_job(unsigned seed);

/// One more run that may be built, 20 m buried direct; `from` and `to` as in `tree_job`.
void add_possible_run(site::Job& job, int from, int to);

/// The same with some of its facts left open or stated as a range: lengths, what pipes do, the
/// house's bonding, the soil.
site::Job random_open_tree_job(unsigned seed);

/// `total` with the energy lost over the years where the workplace counts it.
struct BruteWay {
    double total = std::numeric_limits<double>::infinity();
    std::vector<study::RunScheme> schemes;  ///< in the order of the tree
};

/// The cheapest of all sound ways; infinity where there is none. Every scheme of every run is tried
/// behind every sound one of the runs before it; left is only what, with the least that the runs
/// still to come can cost, is dearer than a sound way already found.
BruteWay brute_cheapest(const tree::Workplace& at, const tree::Floor& floor);

/// The same over every tree that the runs leave open; infinity where there is none.
double brute_cheapest_of_trees(const tree::Workplace& at);

}  // namespace toft::support
