#include "spread/bound.h"

#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::spread {
namespace {

double price_of_trial(const Compact& compact, const Problem& problem, const Trial& trial) {
    std::vector<std::size_t> chosen(problem.branches.size());
    for (std::size_t t = 0; t < trial.picks.size(); ++t) {
        const Twig& twig = compact.twigs[t];
        chosen[twig.branch] = twig.choices[trial.picks[t]].option;
    }
    RC_ASSERT(keeps_limits(problem, chosen));
    return price_of(problem, chosen);
}

RC_GTEST_PROP(BoundLaw, NeverAboveTheOptimumNorTheTrialBelow, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    for (unsigned n = 0; n < 20; ++n) {
        const Problem problem = support::drawn({seed + n, 1 + n % 6, 4, 1 + n % 3});
        const double optimum = support::try_all(problem).price;
        const Compact compact = compacted(problem);
        if (compact.impossible) continue;
        const Bounded found = bounded(compact);
        RC_ASSERT(found.slopes.least <= optimum + 1e-9);
        if (found.best.picks.empty()) continue;
        const double price = price_of_trial(compact, problem, found.best);
        RC_ASSERT(std::abs(price - found.best.price) < 1e-9);
        RC_ASSERT(price >= optimum);
    }
}

RC_GTEST_PROP(BoundLaw, AnySlopesBound, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    for (unsigned n = 0; n < 20; ++n) {
        const Problem problem = support::drawn({seed + n, 1 + n % 6, 4, 1 + n % 3});
        const double optimum = support::try_all(problem).price;
        const Compact compact = compacted(problem);
        if (compact.impossible) continue;
        Slopes slopes;
        for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
            Figures arriving{};
            for (std::size_t i = 0; i < compact.resources; ++i) {
                arriving[i] = 0.5 * *rc::gen::inRange(0, 6);
            }
            slopes.arriving.push_back(arriving);
        }
        evaluate(compact, slopes);
        RC_ASSERT(slopes.least <= optimum + 1e-9);
    }
}

TEST(Bound, IsCloseForALongChainAndATrialIsFound) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 100, 4);
    const Bounded found = bounded(compacted(problem));
    const double optimum = solve(problem)->price;
    EXPECT_GT(found.slopes.least, 0.999 * optimum);
    EXPECT_LT(found.best.price, 1.05 * optimum);
}

TEST(Bound, WithoutLimitsTheCheapestOptionsAreTheBound) {
    Problem problem = support::drawn_sizing(support::Shape::tree, 20, 4);
    double cheapest = 0;
    for (Branch& branch : problem.branches) {
        double least = no_limit;
        for (Option& option : branch.options) {
            least = std::min(least, option.price);
            for (Change& change : option.changes) change.leaves_at_most = no_limit;
        }
        cheapest += least;
    }
    const Bounded found = bounded(compacted(problem));
    EXPECT_NEAR(found.slopes.least, cheapest, 1e-6);
    EXPECT_NEAR(found.best.price, cheapest, 1e-6);
}

}  // namespace
}  // namespace toft::spread
