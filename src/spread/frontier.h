#pragma once
// The choices that nothing beats on price, headroom and grade, where the headroom and the grade of
// a choice are the least over its branches. Each point is the proved answer to "what does it cost
// to have at least so much headroom and at least that grade?"; questions are asked until their
// answers lie within the stated steps of each other. Page: docs/methods/spread.md.

#include "base/outcome.h"
#include "spread/problem.h"

namespace toft::spread {

struct FrontierAsk {
    /// The problem with its limits drawn in so far that what keeps them has at least that headroom:
    /// the same branches and options for every floor, no limit looser at a higher one. How headroom
    /// draws in a limit is the caller's affair. Options whose own headroom is below the floor need
    /// not be left out; that is done here.
    std::function<Problem(double floor)> problem_at;
    double lowest = 0;  ///< floors that are asked for
    double highest = 1;
    double headroom_step = 0.01;  ///< above 0
    double price_step = 0;        ///< 0 or more
};

struct Point {
    std::vector<std::size_t> chosen;
    double price = 0;
    double at_least = 0;  ///< nothing with that headroom and grade costs less; = price if proved
    double headroom = 0;  ///< the floor that was asked for
    int grade = 0;        ///< the floor that was asked for
};

/// For whatever choice keeps the limits at a floor of at least `lowest` there is a point of at
/// least its grade that costs at most `price_step` more or has at most `headroom_step` less
/// headroom (up to `highest`) at no higher price.
struct Frontier {
    std::vector<Point> points;  ///< by price, then headroom; none beats another
    bool proved = true;         ///< false when the caller stopped
    std::size_t solved = 0;     ///< questions asked
};

Outcome<Frontier> frontier(const FrontierAsk& ask, const Patience& patience = {});

}  // namespace toft::spread
