// What runs leave, as figures that add up.

#include "tree/state.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::tree {
namespace {

study::Incoming incoming(double z) {
    study::Incoming in;
    in.drop = 2 * z;
    in.ze_working = ohms(z);
    in.ze_hot = ohms(1.2 * z);
    in.zn_working = ohms(0.8 * z);
    in.zn_hot = ohms(0.9 * z);
    in.zl_hot = ohms(0.5 * z);
    in.runs = ohms(0.6 * z);
    in.ze_least = ohms(0.5 * z);
    in.zn_least = ohms(0.4 * z);
    in.zl_least = ohms(0.2 * z);
    return in;
}

TEST(State, EveryFigureIsWorseWhereItIsLarger) {
    const Figures near = figures_of(incoming(0.3));
    const Figures far = figures_of(incoming(0.9));
    // The largest loops and the drop grow outwards; so do the smallest loops, but there more is
    // better: less current flows.
    for (std::size_t i = 0; i < axes; ++i) {
        if (of_levels(static_cast<Axis>(i))) {
            EXPECT_LT(far[i], near[i]) << i;
        } else {
            EXPECT_GT(far[i], near[i]) << i;
        }
    }
    EXPECT_DOUBLE_EQ(near[static_cast<std::size_t>(Axis::ze_least)], -0.15 * 0.15);
    EXPECT_DOUBLE_EQ(near[static_cast<std::size_t>(Axis::zn_hot)], 0.27);
}

RC_GTEST_PROP(State, OneAxisMovesByItselfAndInItsOwnMeasure, ()) {
    const double share = *rc::gen::inRange(0, 1001) / 1000.0;
    const auto which = *rc::gen::inRange<std::size_t>(0, axes);
    const auto from = incoming(*rc::gen::inRange(1, 100) / 100.0);
    const auto to = incoming(*rc::gen::inRange(1, 100) / 100.0);
    const Figures a = figures_of(from);
    const Figures b = figures_of(to);
    const Figures there = figures_of(moved(from, to, static_cast<Axis>(which), share));
    for (std::size_t i = 0; i < axes; ++i) {
        const double expected = i == which ? a[i] + (b[i] - a[i]) * share : a[i];
        RC_ASSERT(std::abs(there[i] - expected) < 1e-12);
    }
}

TEST(State, TheLoopOfALineAloneMovesWithThatToTheNeutral) {
    const auto from = incoming(0.3);
    const auto to = incoming(0.9);
    EXPECT_DOUBLE_EQ(moved(from, to, Axis::zn_hot, 1).zl_hot.number(), to.zl_hot.number());
    EXPECT_DOUBLE_EQ(moved(from, to, Axis::zn_working, 1).runs.number(), to.runs.number());
    EXPECT_NEAR(moved(from, to, Axis::zn_least, 1).zl_least.number(), to.zl_least.number(), 1e-15);
    EXPECT_DOUBLE_EQ(moved(from, to, Axis::ze_hot, 1).zl_hot.number(), from.zl_hot.number());
}

}  // namespace
}  // namespace toft::tree
