// A choice that was promised too much is made stricter by just what is to blame.

#include "tree/tighten.h"

#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

class Tightening : public testing::Test {
protected:
    const study::Incoming& best() {
        return choices_[1].arriving[static_cast<std::size_t>(choices_[1].choices[0].earth)]->best;
    }

    site::Job job_ = support::tree_job({support::the_house, 0});
    Workplace at_{support::small_shop().catalogue, support::small_shop().book, job_, {}, nullptr};
    Tree tree_ = tree_of(at_);
    std::vector<RunChoices> choices_ = choices_of(at_, tree_, {}, Depth::full);
    Asking asking_{tree_.order[1].run, {}, Depth::full};
};

TEST_F(Tightening, ALoopTooLargeForTheDeviceBoundsWhatItTakes) {
    constexpr auto ze = static_cast<std::size_t>(Axis::ze_working);
    study::Incoming arriving = best();
    arriving.ze_working = ohms(50);
    ASSERT_TRUE(tighten(at_, asking_, choices_[1], 0, arriving));
    const Choice& stricter = choices_[1].choices[0];
    EXPECT_LT(stricter.takes[ze], 50);
    EXPECT_GE(stricter.takes[ze], best().ze_working.number());
    study::Incoming just = best();
    just.ze_working = ohms(stricter.takes[ze]);
    RunJudge judge(at_, asking_.run, stricter.scheme.phases, &just);
    EXPECT_TRUE(judge.judge(stricter.scheme, {}).sound) << "what it still takes it can bear";
}

TEST_F(Tightening, WhatTheBestBringsIsNotToBlame) {
    EXPECT_FALSE(tighten(at_, asking_, choices_[1], 0, best()));
}

}  // namespace
}  // namespace toft::tree
