#include "spread/core.h"

#include "spread/pass.h"
#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::spread {
namespace {

std::vector<std::size_t> whole_choice(const Compact& compact, const Trial& trial) {
    std::vector<std::size_t> chosen(compact.twigs.size() + compact.settled.size());
    for (std::size_t t = 0; t < trial.picks.size(); ++t) {
        const Twig& twig = compact.twigs[t];
        chosen[twig.branch] = twig.choices[trial.picks[t]].option;
    }
    for (const auto& [branch, option] : compact.settled) chosen[branch] = option;
    return chosen;
}

RC_GTEST_PROP(CoreLaw, HoldsTheBestSolutionDownToItsPrice, ()) {
    const unsigned seed = *rc::gen::arbitrary<unsigned>();
    for (unsigned n = 0; n < 30; ++n) {
        const Problem problem = support::drawn({seed + n, 1 + n % 6, 4, 1 + n % 3});
        const auto best = support::try_all(problem);
        const Compact compact = compacted(problem);
        if (compact.impossible || best.chosen.empty()) continue;
        const Slopes slopes = bounded(compact).slopes;
        const Core core = core_of(compact, slopes, best.price - slopes.least + 1e-9);
        RC_ASSERT(!core.compact.impossible);
        RC_ASSERT(core.slopes.least <= best.price + 1e-9);
        PassOrder order;
        order.cap = 1000000;
        const Passed passed = pass(core.compact, planned(core.compact), core.slopes, order);
        RC_ASSERT(whole_choice(core.compact, passed.best) == best.chosen);
        RC_ASSERT(passed.best.price == best.price);
    }
}

TEST(Core, OfALongChainFewBranchesAreTrulyOpen) {
    const Problem problem = support::drawn_sizing(support::Shape::chain, 200, 2);
    const Compact compact = compacted(problem);
    const Slopes slopes = bounded(compact).slopes;
    const double price = solve(problem)->price;
    const Core core = core_of(compact, slopes, price - slopes.least + 1e-6);
    EXPECT_LT(core.compact.twigs.size(), 100u);
    EXPECT_EQ(core.compact.twigs.size() + core.compact.settled.size(), 200u);
}

TEST(Core, WithoutRoomBelowTheBoundNothingIsLeft) {
    const Compact compact = compacted(support::drawn_sizing(support::Shape::tree, 20, 2));
    EXPECT_TRUE(core_of(compact, bounded(compact).slopes, -1).compact.impossible);
}

}  // namespace
}  // namespace toft::spread
