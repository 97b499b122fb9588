#pragma once
// One pass over the plan: offers of every part of the tree, those of which no solution can come
// that costs as little as the best known one left out. With a cap, only so many offers of a part
// are kept; what was cut is answered for by the least that any solution with it can cost.

#include "spread/bound.h"
#include "spread/plan.h"

#include <functional>

namespace toft::spread {

struct PassOrder {
    std::size_t cap = 0;      ///< most offers kept of a part
    double price = no_limit;  ///< solutions up to that price are looked for
    double guard = 0;         ///< below that, two sums of prices are not told apart
    std::function<bool(std::uint64_t)> go_on;  ///< asked now and then with the offers made
};

struct Passed {
    Trial best;  ///< cheapest among what was not cut; empty if none costs `price` or less
    double cut = no_limit;  ///< no solution with anything that was cut costs less
    double least = 0;       ///< the bound when only small parts of the tree were known
    std::uint64_t offers = 0;
    bool stopped = false;
};

Passed pass(const Compact& compact, const std::vector<Stage>& plan, const Slopes& slopes,
            const PassOrder& order);

}  // namespace toft::spread
