// What may be chosen for each run, before the whole is put together.

#include "tree/choices.h"

#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::tree {
namespace {

class Chosen : public testing::Test {
protected:
    std::vector<RunChoices> of(Depth depth, const Floor& floor = {}) {
        return choices_of(at_, tree_of(at_), {floor, {}}, depth);
    }

    static double cheapest_of(const RunChoices& run) {
        double least = no_limit;
        for (const Choice& c : run.choices) least = std::min(least, c.price);
        return least;
    }

    site::Job job_ = support::tree_job({support::the_house, 0});
    Workplace at_{support::small_shop().catalogue, support::small_shop().book, job_, {}, nullptr};
};

TEST_F(Chosen, QuickOnesAreFewerAndTheirCheapestIsNoDearer) {
    const auto quick = of(Depth::quick);
    const auto full = of(Depth::full);
    ASSERT_EQ(quick.size(), 2u);
    for (std::size_t i = 0; i < 2; ++i) {
        ASSERT_FALSE(quick[i].choices.empty());
        EXPECT_LE(quick[i].choices.size(), full[i].choices.size());
        EXPECT_LE(cheapest_of(quick[i]), cheapest_of(full[i]) + penny_part);
        EXPECT_GT(quick[i].considered, static_cast<long>(quick[i].choices.size()));
    }
}

TEST_F(Chosen, EachUsesUpSomeOfTheVoltageAndTakesNoMoreThanTheRest) {
    constexpr auto drop = static_cast<std::size_t>(Axis::drop);
    for (const RunChoices& run : of(Depth::full)) {
        for (const Choice& c : run.choices) {
            EXPECT_GT(c.uses[drop], 0);
            EXPECT_GE(c.takes[drop], -1e-9);
        }
    }
}

TEST_F(Chosen, AFloorOfHeadroomLeavesFewer) {
    const auto all = of(Depth::full);
    const auto above = of(Depth::full, Floor{0.4, 0});
    EXPECT_LT(above[0].choices.size(), all[0].choices.size());
}

}  // namespace
}  // namespace toft::tree
