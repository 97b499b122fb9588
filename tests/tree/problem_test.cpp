// The choices of all runs as the solver is asked about them.

#include "tree/problem.h"

#include "spread/solve.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

class Posing : public testing::Test {
protected:
    Posed pose(const std::vector<Ban>& bans) {
        return posed(tree_, choices_, bans, {}, Depth::full);
    }

    site::Job job_ = support::tree_job({support::the_house, 0});
    Workplace at_{support::small_shop().catalogue, support::small_shop().book, job_, {}, nullptr};
    Tree tree_ = tree_of(at_);
    std::vector<RunChoices> choices_ = choices_of(at_, tree_, {}, Depth::full);
};

TEST_F(Posing, EveryChoiceIsAnOptionOfItsPrice) {
    const Posed all = pose({});
    ASSERT_EQ(all.problem.branches.size(), 2u);
    EXPECT_EQ(all.problem.branches[0].parent, spread::from_root);
    EXPECT_EQ(all.problem.branches[1].parent, 0u);
    for (std::size_t i = 0; i < 2; ++i) {
        const auto& options = all.problem.branches[i].options;
        ASSERT_EQ(options.size(), all.choice_of[i].size());
        for (std::size_t k = 0; k < options.size(); ++k) {
            EXPECT_EQ(options[k].price, choices_[i].choices[all.choice_of[i][k]].price);
        }
    }
}

TEST_F(Posing, WhatIsBannedIsNotOffered) {
    const Posed all = pose({});
    const Posed without = pose({{0, all.choice_of[0].front()}});
    EXPECT_EQ(without.problem.branches[0].options.size() + 1,
              all.problem.branches[0].options.size());
    EXPECT_TRUE(pose({{1, std::nullopt}}).problem.branches[1].options.empty())
        << "a run from an outbuilding always takes a way";
}

TEST_F(Posing, ABuildingThatAsksForBondingNeedsEveryRunBeforeItToBond) {
    for (RunChoices& run : choices_) {
        for (Choice& c : run.choices) c.bonds = false;
    }
    for (Choice& c : choices_[1].choices) c.asks_bond = !c.own_electrode();
    const Posed asked = pose({});
    const auto answer = spread::solve(asked.problem);
    ASSERT_TRUE(answer);
    for (std::size_t k = 0; k < asked.problem.branches[1].options.size(); ++k) {
        const Choice& c = choices_[1].choices[asked.choice_of[1][k]];
        if (c.own_electrode()) continue;
        EXPECT_FALSE(spread::keeps_limits(asked.problem, {0, k}));
    }
}

}  // namespace
}  // namespace toft::tree
