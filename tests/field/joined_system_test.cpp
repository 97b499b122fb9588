#include "field/joined_system.h"

#include "earth/rod_pair.h"
#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

std::vector<Wire> two_rods(double apart, double length = 1.2) {
    return {rod(0, 0, length, 0.016, 0), rod(apart, 0, length, 0.016, 1)};
}

// Dwight 1936 (IEEE 142 table 13): earth/rod_pair.h is the closed form of its series.
TEST(JoinedSystem, MutualOfTwoRodsIsTheClosedForm) {
    for (double apart : {1.2, 2.4, 5.0, 20.0}) {
        Silent ledger;
        const Ohms closed = earth::mutual_resistance(
            ledger, {"R12", ""},
            earth::RodPair<Silent>{ohm_metres(100), metres(1.2), metres(apart)});
        const TwoEarths earths = two_earths(field_of(plain_soil(), two_rods(apart)));
        EXPECT_NEAR(earths.mutual / closed, 1, 0.015) << apart;
        EXPECT_NEAR(earths.joined / ((earths.of_a + earths.mutual) / 2), 1, 1e-9);
        EXPECT_NEAR(earths.onto_b / earths.onto_a, 1, 1e-9);
    }
}

TEST(JoinedSystem, FarApartTheShareIsTheEqualHalfBallOverTheDistance) {
    // r_e = rho/(2 pi R): 0.22 m for a rod of 1.2 m, 5 % at 4.5 m (own computation, no outside
    // source).
    const TwoEarths earths = two_earths(field_of(plain_soil(), two_rods(4.5)));
    const double half_ball = 100 / (2 * pi * earths.of_a.number());
    EXPECT_NEAR(half_ball, 0.22, 0.01);
    EXPECT_NEAR(earths.onto_b / (half_ball / 4.5), 1, 0.03);
    EXPECT_NEAR(earths.onto_b, 0.05, 0.002);
}

TEST(JoinedSystem, TheLowerEarthReachesFartherThanTheHigher) {
    auto wires = ring_wires(spot(0, 0, 0.6), metres(8), metres(0.004), 36, 0);
    wires.push_back(rod(12, 0, 1.2, 0.016, 1));
    const TwoEarths earths = two_earths(field_of(stack({{200, 0.5}, {100, 2}}, 400), wires));
    EXPECT_LT(earths.of_a, earths.of_b);
    EXPECT_GT(earths.onto_b, 2 * earths.onto_a);
}

TEST(JoinedSystem, BridgeJoinsThemMoreTheLessItResists) {
    const Field field = field_of(stack({{200, 0.5}, {100, 2}}, 400), two_rods(2));
    const TwoEarths earths = two_earths(field);
    const Bridged joined = bridged(earths, ohms(0));
    EXPECT_NEAR(joined.from_a / field.joined(), 1, 1e-9);
    EXPECT_NEAR(joined.onto_b, 1, 1e-12);
    EXPECT_NEAR(joined.through, 0.5, 1e-9);
    const Bridged open = bridged(earths, ohms(1e12));
    EXPECT_NEAR(open.from_a / earths.of_a, 1, 1e-9);
    EXPECT_NEAR(open.onto_b, earths.onto_b, 1e-9);
    Bridged before = joined;
    for (double bridge : {1.0, 10.0, 100.0}) {
        const Bridged now = bridged(earths, ohms(bridge));
        EXPECT_GT(now.from_a, before.from_a);
        EXPECT_LT(now.onto_b, before.onto_b);
        EXPECT_LT(now.through, before.through);
        // The same by the rises of the field for the currents that the bridge leaves.
        const auto rises = field.rises({amperes(1 - now.through), amperes(now.through)});
        EXPECT_NEAR(rises[0].number(), now.from_a.number(), 1e-9);
        EXPECT_NEAR((rises[0] - rises[1]).number(), bridge * now.through, 1e-9);
        before = now;
    }
}

TEST(JoinedSystem, SeparationIsWhereTheShareIsMet) {
    const Medium ready = medium(stack({{300, 0.5}, {80, 2}}, 500));
    const Move move{1, 0, metres(60)};
    const auto found = separate(ready, two_rods(1), move, 0.05);
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->reached);
    EXPECT_LE(found->at.earths.onto_b, 0.05);
    EXPECT_NEAR(found->at.earths.onto_b, 0.05, 1e-4);
    const double apart = 1 + found->at.moved.number();
    const auto share = [&](double s) {
        return two_earths(*solve_field(ready, two_rods(s))).onto_b;
    };
    EXPECT_NEAR(share(apart), found->at.earths.onto_b, 1e-9);
    EXPECT_GT(share(apart - 0.01), 0.05);
}

TEST(JoinedSystem, SeparationSaysWhenItIsNotReachedOrAlreadyThere) {
    const Medium ready = medium(stack({}, 100));
    const auto never = separate(ready, two_rods(1), {1, 0, metres(3)}, 0.01);
    ASSERT_TRUE(never);
    EXPECT_FALSE(never->reached);
    EXPECT_EQ(never->at.moved, metres(3));
    EXPECT_GT(never->at.earths.onto_b, 0.01);
    const auto already = separate(ready, two_rods(10), {0, 2, metres(30)}, 0.1);
    ASSERT_TRUE(already);
    EXPECT_TRUE(already->reached);
    EXPECT_EQ(already->at.moved, metres(0));
}

TEST(JoinedSystem, MovingPastTheOtherCountsFromBehindIt) {
    // The moved rod starts on one side, passes through the other rod and comes out behind.
    const auto found = separate(medium(stack({}, 100)), two_rods(-10), {1, 0, metres(60)}, 0.05);
    ASSERT_TRUE(found);
    ASSERT_TRUE(found->reached);
    EXPECT_NEAR(found->at.moved.number(), 14.5, 0.3);
}

TEST(JoinedSystem, MovesThatMakeNoSenseAreRefused) {
    const Medium ready = medium(stack({}, 100));
    EXPECT_FALSE(separate(ready, two_rods(1), {0, 0, metres(10)}, 0.1));
    EXPECT_FALSE(separate(ready, two_rods(1), {1, 0, metres(0)}, 0.1));
    EXPECT_FALSE(separate(ready, two_rods(1), {1, NAN, metres(10)}, 0.1));
    EXPECT_FALSE(separate(ready, two_rods(1), {1, 0, metres(10)}, 0));
    EXPECT_FALSE(separate(ready, two_rods(1), {1, 0, metres(10)}, 1));
    EXPECT_FALSE(separate(ready, {rod(0, 0, 1.2, 0.016)}, {1, 0, metres(10)}, 0.1));
    auto three = two_rods(1);
    three.push_back(rod(5, 5, 1.2, 0.016, 2));
    EXPECT_FALSE(separate(ready, three, {1, 0, metres(10)}, 0.1));
}

RC_GTEST_PROP(JoinedSystem, SharesLieBetweenNothingAndAllAndFallWithDistance, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
    const Medium ready =
        medium(stack({{number(100, 9000), number(2, 30)}, {number(100, 9000), number(2, 30)}},
                     number(100, 9000)));
    double before = 1;
    for (double apart : {0.4, 1.0, 3.0, 10.0}) {
        const TwoEarths earths = two_earths(*solve_field(ready, two_rods(apart), {metres(0.3), 6}));
        RC_ASSERT(earths.onto_b > 0);
        RC_ASSERT(earths.onto_b < before);
        RC_ASSERT(earths.joined < earths.of_a);
        RC_ASSERT(earths.joined < earths.of_b);
        before = earths.onto_b;
    }
}

}  // namespace
}  // namespace toft::field
