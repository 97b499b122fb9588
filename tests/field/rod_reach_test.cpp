#include "field/rod_reach.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

Rods rods(double section, int longest, double top = 0) {
    return {metres(0.016), metres(top), metres(section), longest};
}

std::vector<double> lengths(const Strata& soil, const Rods& kind, const RodGroup& group = {}) {
    std::vector<double> ohms;
    const auto all = *rod_lengths(medium(soil), kind, group);
    for (const RodLength& one : all) {
        ohms.push_back(one.resistance.number());
    }
    return ohms;
}

TEST(RodReach, EveryLengthIsTheFieldOfThatRod) {
    for (const Strata& soil : {stack({}, 100), stack({{1000, 0.5}, {100, 1.0}}, 300),
                               stack({{50, 1.5}}, 800), stack({{400, 3.0}, {100, 2.0}}, 20)}) {
        const auto ohms = lengths(soil, rods(1.2, 5));
        for (int s = 1; s <= 5; ++s) {
            const double field = joined(soil, {rod(0, 0, 1.2 * s, 0.016)}, 0.05, 24);
            EXPECT_NEAR(ohms[static_cast<std::size_t>(s - 1)] / field, 1, 0.01) << s;
        }
    }
}

TEST(RodReach, TopUnderTheSurfaceReadsLower) {
    const auto at_surface = lengths(stack({}, 100), rods(1.2, 3));
    const auto under = lengths(stack({}, 100), rods(1.2, 3, 0.5));
    const Wire wire = rod_wire(spot(0, 0, 0.5), metres(1.2), metres(0.008));
    EXPECT_LT(under[0], at_surface[0]);
    EXPECT_NEAR(under[0] / joined(stack({}, 100), {wire}, 0.05, 24), 1, 0.01);
}

// Own computation of another program for 1.2 m x 16 mm in 100 ohm metres, no outside source.
TEST(RodReach, GroupsAreWhatAnotherProgramFound) {
    const auto one = [](const RodGroup& group) {
        return lengths(stack({}, 100), rods(1.2, 1), group).front();
    };
    using enum Arrangement;
    EXPECT_NEAR(one({}), 70.7, 0.5);
    EXPECT_NEAR(one({line, 2, metres(1.2)}), 40.9, 0.3);
    EXPECT_NEAR(one({line, 3, metres(2.4)}), 27.1, 0.2);
    EXPECT_NEAR(one({line, 5, metres(1.2)}), 20.0, 0.15);
    EXPECT_NEAR(one({triangle, 3, metres(1.2)}), 30.9, 0.25);
    EXPECT_NEAR(one({triangle, 3, metres(2.4)}), 27.8, 0.2);
    EXPECT_NEAR(one({square, 4, metres(2.4)}), 21.9, 0.2);
    EXPECT_NEAR(one({line, 2, metres(0.3)}), 47.6, 0.4);
}

TEST(RodReach, GroupsStandWhereTheyShould) {
    const auto apart = [](const Spot& a, const Spot& b) {
        return std::hypot((a.east - b.east).number(), (a.north - b.north).number());
    };
    const auto three = places_of({Arrangement::triangle, 3, metres(2)}, metres(0.3));
    EXPECT_NEAR(apart(three[0], three[1]), 2, 1e-12);
    EXPECT_NEAR(apart(three[0], three[2]), 2, 1e-12);
    EXPECT_NEAR(apart(three[1], three[2]), 2, 1e-12);
    EXPECT_EQ(three[2].depth, metres(0.3));
    const auto eight = places_of({Arrangement::square, 8, metres(2)}, metres(0));
    ASSERT_EQ(eight.size(), 8u);
    for (const Spot& one : eight) {
        int neighbours = 0;
        for (const Spot& other : eight) neighbours += std::fabs(apart(one, other) - 2) < 1e-9;
        EXPECT_EQ(neighbours, 2);
    }
    EXPECT_EQ(places_of({Arrangement::line, 4, metres(2)}, metres(0)).back().east, metres(6));
}

TEST(RodReach, ShortestIsTheFirstThatMeetsTheTargetAndNoneIsSaid) {
    const Medium ready = medium(stack({{500, 1.5}, {200, 1.5}}, 40));
    const auto all = *rod_lengths(ready, rods(1.2, 6));
    const auto found = *shortest_rods(ready, rods(1.2, 6), {}, all[2].resistance);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->sections, 3);
    EXPECT_NEAR(found->length.number(), 3.6, 1e-12);
    EXPECT_EQ(found->resistance, all[2].resistance);
    const auto next = *shortest_rods(ready, rods(1.2, 6), {}, all[2].resistance * 0.999);
    ASSERT_TRUE(next);
    EXPECT_EQ(next->sections, 4);
    EXPECT_FALSE(*shortest_rods(ready, rods(1.2, 6), {}, all[5].resistance * 0.999));
}

TEST(RodReach, ShortSectionsFindTheLengthToFiveCentimetres) {
    const Medium ready = medium(stack({{100, 1}}, 50));
    const auto found = *shortest_rods(ready, rods(0.05, 100), {}, ohms(30));
    ASSERT_TRUE(found);
    const double length = found->length.number();
    EXPECT_LE(joined(ready.soil(), {rod(0, 0, length * 1.02, 0.016)}, 0.05, 24), 30);
    EXPECT_GT(joined(ready.soil(), {rod(0, 0, length * 0.95, 0.016)}, 0.05, 24), 30);
}

TEST(RodReach, FewestInALineIsTheFirstThatMeetsTheTarget) {
    const Medium ready = medium(stack({{100, 2}, {1000, 1}}, 3000));
    const auto counts = *rods_in_line(ready, rods(1.2, 1), metres(2.4), 8);
    ASSERT_EQ(counts.size(), 8u);
    EXPECT_EQ(counts[3].rods, 4);
    const auto group = *rod_lengths(ready, rods(1.2, 1), {Arrangement::line, 4, metres(2.4)});
    EXPECT_NEAR(counts[3].resistance / group[0].resistance, 1, 1e-9);
    const RodGroup most{Arrangement::line, 8, metres(2.4)};
    const auto found = *fewest_in_line(ready, rods(1.2, 1), most, counts[3].resistance);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->rods, 4);
    EXPECT_FALSE(*fewest_in_line(ready, rods(1.2, 1), most, counts[7].resistance * 0.99));
}

TEST(RodReach, WhatCannotBeAskedIsRefusedAllAtOnce) {
    const Medium ready = medium(stack({}, 100));
    const auto refused = [&](const Rods& kind, const RodGroup& group = {}) {
        const auto result = rod_lengths(ready, kind, group);
        return result ? 0u : result.error().size();
    };
    EXPECT_EQ(refused(rods(1.2, 3)), 0u);
    EXPECT_EQ(refused(rods(0, 3)), 1u);
    EXPECT_EQ(refused(rods(NAN, 3)), 1u);
    EXPECT_EQ(refused(rods(1.2, 0)), 1u);
    EXPECT_EQ(refused(rods(1.2, 3, -1), {Arrangement::line, 0, {}}), 2u);
    EXPECT_EQ(refused(rods(1.2, 3), {Arrangement::line, 2, metres(0.01)}), 1u);
    EXPECT_EQ(refused(rods(1.2, 3), {Arrangement::triangle, 4, metres(2)}), 1u);
    EXPECT_EQ(refused(rods(1.2, 3), {Arrangement::square, 6, metres(2)}), 1u);
    EXPECT_EQ(refused(rods(1.2, 1000000000)), 1u);
    EXPECT_EQ(refused(rods(1.2, 3), {Arrangement::line, 1000000000, metres(2)}), 1u);
    EXPECT_EQ(refused({metres(0), metres(0), metres(1.2), 3}), 1u);
}

RC_GTEST_PROP(RodReach, LongerAndMoreIsNeverWorse, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
    const Strata soil =
        stack({{number(100, 9000), number(2, 30)}, {number(100, 9000), number(2, 30)}},
              number(100, 9000));
    const Medium ready = medium(soil);
    const auto all = *rod_lengths(ready, rods(0.6, 6));
    for (std::size_t i = 1; i < all.size(); ++i) {
        RC_ASSERT(all[i].resistance < all[i - 1].resistance);
    }
    const auto counts = *rods_in_line(ready, rods(1.2, 1), metres(number(3, 40)), 4);
    for (std::size_t i = 1; i < counts.size(); ++i) {
        RC_ASSERT(counts[i].resistance < counts[i - 1].resistance);
        RC_ASSERT(counts[i].resistance * counts[i].rods > counts[0].resistance * 0.999);
    }
}

}  // namespace
}  // namespace toft::field
