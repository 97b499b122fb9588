// What may arrive behind a run, over all ways to build it.

#include "tree/choice.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

study::Incoming board(double ohms_there, double drop) {
    study::Incoming in;
    in.drop = drop;
    in.ze_working = in.ze_hot = in.zn_working = in.zn_hot = ohms(ohms_there);
    in.ze_least = in.zn_least = ohms(ohms_there / 2);
    in.device = &support::catalogue().devices.front();
    return in;
}

Choice leaving(double ohms_there, double drop) {
    Choice c;
    c.leaves = board(ohms_there, drop);
    return c;
}

TEST(Choice, WhatArrivesLiesBetweenTheBestAndTheWorstThatMayBeLeft) {
    const auto arriving = arriving_behind({leaving(0.3, 1), leaving(0.5, 2)}, {}, board(0.2, 0));
    const auto& at = arriving[static_cast<std::size_t>(Earth::supply)];
    ASSERT_TRUE(at);
    EXPECT_FALSE(arriving[static_cast<std::size_t>(Earth::island)]);
    EXPECT_EQ(at->best.ze_working, ohms(0.3));
    EXPECT_EQ(at->worst.ze_working, ohms(0.5));
    EXPECT_EQ(at->best.drop, 1);
    EXPECT_EQ(at->worst.drop, 2);
    EXPECT_EQ(at->worst.ze_least, ohms(0.15)) << "the largest fault there may be";
}

TEST(Choice, ALoopIsNoLargerThanGoesWithTheDropThatIsAllowed) {
    auto arriving = arriving_behind({leaving(0.3, 1), leaving(0.5, 2)}, {}, board(0.2, 0));
    Arriving& at = *arriving[static_cast<std::size_t>(Earth::supply)];
    keep_within_drop(at, 1);
    EXPECT_NEAR(at.worst.ze_working.number(), 0.2 + 0.15, 1e-12) << "0.15 ohm a per cent";
    keep_within_drop(at, 5);
    EXPECT_NEAR(at.worst.ze_working.number(), 0.35, 1e-12) << "never larger again";
}

TEST(Choice, BehindAnElectrodeOfItsOwnTheEarthIsAnIsland) {
    Choice own = leaving(0.3, 1);
    own.scheme.earthing = study::BuildingEarthing::own_electrode;
    EXPECT_EQ(own.earth_left(), Earth::island);
    const auto arriving = arriving_behind({own}, {}, board(0.2, 0));
    EXPECT_TRUE(arriving[static_cast<std::size_t>(Earth::island)]);
    EXPECT_FALSE(arriving[static_cast<std::size_t>(Earth::supply)]);
}

}  // namespace
}  // namespace toft::tree
