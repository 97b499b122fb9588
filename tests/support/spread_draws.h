#pragma once
// Problems for src/spread drawn from a seed, and the plain loop over every choice.

#include "spread/problem.h"

#include <vector>

namespace toft::support {

struct DrawnSpread {
    unsigned seed = 0;
    std::size_t branches = 5;
    std::size_t options = 4;
    std::size_t resources = 2;
    bool mixed = true;    ///< some options set what leaves, some amounts are negative
    double grain = 0.25;  ///< figures are whole multiples of it
};

/// A tree with branches in any order. Figures are few, so that many prices and states tie.
spread::Problem drawn(const DrawnSpread& asked);

/// Branches as an answer is read: each before what it feeds, siblings as they stand.
std::vector<std::size_t> read_from_root(const spread::Problem& problem);

/// By trying every choice in the order of the answer; `chosen` is empty where none keeps all
/// limits.
struct Tried {
    std::vector<std::size_t> chosen;
    double price = spread::no_limit;
};
Tried try_all(const spread::Problem& problem);

/// How branches hang together: a tree drawn at random, one after the other, or all on the first.
enum class Shape { tree, chain, star };

/// Sizing of runs: the resistance of copper by IEC 60228 class 2 at 20 °C (1.5 to 50 mm²), drop and
/// loop as resources, prices that grow with the section, limits that bind. The same for a seed on
/// every machine. Resources beyond two go with the loop's, by a factor of each run and size.
spread::Problem drawn_sizing(Shape shape, std::size_t branches, unsigned seed,
                             std::size_t resources = 2);

}  // namespace toft::support
