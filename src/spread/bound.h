#pragma once
// What the rest must cost at least. Each resource gets a price at each node, the more the less of
// it is left behind: with slopes p >= 0 on what arrives at a branch and P, the sum of its
// children's, on what leaves it,
//
//   all from the branch on, fed with s   >=   own + p s + the same of its children without their p
//   s own = least over choices and s of    price + P out(s) − p s
//
// whatever the slopes, so the sum over all branches is a lower bound of every solution. Slopes are
// improved by subgradient steps; on the way, choices that are cheap at such prices and keep the
// limits are tried out as solutions.

#include "spread/compact.h"

#include <vector>

namespace toft::spread {

struct Slopes {
    std::vector<Figures> arriving;  ///< p of each twig
    std::vector<Figures> leaving;   ///< P of each twig
    std::vector<double> own;
    Figures at_root{};  ///< sum of p over the branches from the root
    double least = 0;   ///< the bound
};

/// A choice for each twig (place in its `choices`); empty when none is known.
struct Trial {
    std::vector<std::uint32_t> picks;
    double price = no_limit;
};

struct Bounded {
    Slopes slopes;
    Trial best;
};

/// What a choice contributes to `own` of its twig at least.
double own_of(const Compact& compact, const Slopes& slopes, std::uint32_t twig,
              const Choice& choice);

/// `own`, `leaving`, `at_root` and `least` for given `arriving`.
void evaluate(const Compact& compact, Slopes& slopes);

/// From the root down the choice that is cheapest at these slopes among those that each resource
/// for itself allows; empty if that leads into a dead end.
Trial tried(const Compact& compact, const Slopes& slopes);

/// The best after so many steps at most, from slopes of nothing. Steps are the better measured, the
/// closer `known` is to the least price of all.
Bounded bounded(const Compact& compact, int steps = 150, double known = no_limit);

}  // namespace toft::spread
