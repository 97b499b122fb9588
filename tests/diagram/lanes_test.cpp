#include "diagram/lanes.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

answer::CableAnswer cable(bool armoured, int parallel = 1) {
    answer::CableAnswer c;
    c.armoured = armoured;
    c.parallel = parallel;
    return c;
}

TEST(Lanes, OneCableLiesOnTheLiveLineAndAPairOnBothSidesOfIt) {
    EXPECT_EQ(lanes_of(cable(true)), std::vector<double>{0});
    const auto pair = lanes_of(cable(true, 2));
    ASSERT_EQ(pair.size(), 2u);
    EXPECT_EQ(pair[0], -pair[1]);
    EXPECT_NE(pair[0], 0);
}

TEST(Lanes, AGlandOnEachArmouredCableAndNoneElsewhere) {
    const auto glands = [](const answer::CableAnswer& c) {
        return count_kind(drawn([&](Ladder& l) { draw_glands(c, 20, 1, l); }), "gland");
    };
    EXPECT_EQ(glands(cable(true)), 1);
    EXPECT_EQ(glands(cable(true, 2)), 2);
    EXPECT_EQ(glands(cable(false)), 0);
}

TEST(Lanes, ArmourIsTiedToEarthOrMarkedAsJoinedToNothing) {
    const auto tied = [](bool earthed) {
        return drawn([&](Ladder& l) { tie_armour(cable(true), earthed, 20, l); });
    };
    EXPECT_EQ(count_kind(tied(true), "armour-earthed"), 1);
    EXPECT_EQ(count_kind(tied(true), "armour-insulated"), 0);
    EXPECT_EQ(count_kind(tied(false), "armour-insulated"), 1);
    EXPECT_EQ(count_kind(tied(false), "armour-earthed"), 0);
}

TEST(Lanes, OnlyAPairSpreads) {
    const auto spreads = [](int parallel) {
        return count_kind(drawn([&](Ladder& l) { spread(cable(true, parallel), 20, l); }), "pair");
    };
    EXPECT_EQ(spreads(1), 0);
    EXPECT_EQ(spreads(2), 1);
}

}  // namespace
}  // namespace toft::diagram
