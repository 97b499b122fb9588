#include "picture/route_scale.h"

#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using site::LegMethod;

std::vector<site::Leg> legs_of(const std::vector<std::pair<LegMethod, double>>& wanted) {
    std::vector<site::Leg> legs;
    for (const auto& [method, length] : wanted) legs.push_back(support::plain_leg(method, length));
    return legs;
}

TEST(RouteScale, LengthsOnPaperAreProportionalToMetres) {
    const auto legs =
        legs_of({{LegMethod::clipped, 7}, {LegMethod::buried_direct, 21}, {LegMethod::clipped, 2}});
    const RouteScale route = scale_route(legs, 250, 1150);
    ASSERT_EQ(route.legs.size(), 3u);
    EXPECT_FALSE(route.any_broken);
    EXPECT_NEAR(route.units_per_metre, 30, 1e-9);
    const double metres[] = {7, 21, 2};
    for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(route.legs[i].width(), 30 * metres[i], 1e-9);
    EXPECT_NEAR(route.legs.back().right, 1150, 1e-9);
}

TEST(RouteScale, LegsKnowWhoseTheyAre) {
    const RouteScale route = scale_route(legs_of({{LegMethod::clipped, 5},
                                                  {LegMethod::buried_direct, 10},
                                                  {LegMethod::clipped, 4},
                                                  {LegMethod::overhead, 10},
                                                  {LegMethod::tray, 3}}),
                                         0, 320);
    EXPECT_EQ(route.legs[0].side, Side::house);
    EXPECT_EQ(route.legs[2].side, Side::between);
    EXPECT_EQ(route.legs[4].side, Side::outbuilding);
    EXPECT_NEAR(route.house_end, 50, 1e-9);
    EXPECT_NEAR(route.far_start, 290, 1e-9);
}

TEST(RouteScale, ARunThatCrossesNothingIsAllOutdoors) {
    const RouteScale route =
        scale_route(legs_of({{LegMethod::clipped, 12}, {LegMethod::clipped, 6}}), 100, 460);
    for (const LegSpan& span : route.legs) EXPECT_EQ(span.side, Side::between);
    EXPECT_EQ(route.house_end, 100);
    EXPECT_EQ(route.far_start, 460);
}

TEST(RouteScale, AVeryLongLegIsBrokenAndTheOthersKeepTheScale) {
    const RouteScale route = scale_route(legs_of({{LegMethod::clipped, 2},
                                                  {LegMethod::buried_direct, 900},
                                                  {LegMethod::buried_direct, 6}}),
                                         0, 880);
    EXPECT_TRUE(route.any_broken);
    EXPECT_FALSE(route.legs[0].broken);
    EXPECT_TRUE(route.legs[1].broken);
    EXPECT_FALSE(route.legs[2].broken);
    EXPECT_NEAR(route.legs[0].width(), shortest_on_paper, 1e-6);
    EXPECT_NEAR(route.legs[2].width(), 3 * route.legs[0].width(), 1e-6);
    EXPECT_LT(route.legs[1].width(), 900 * route.units_per_metre);
    EXPECT_NEAR(route.legs[2].right, 880, 1e-6);
}

TEST(RouteScale, TwelveToOneIsNotBroken) {
    const RouteScale route =
        scale_route(legs_of({{LegMethod::clipped, 1}, {LegMethod::buried_direct, 12}}), 0, 130);
    EXPECT_FALSE(route.any_broken);
    EXPECT_NEAR(route.legs[0].width(), 10, 1e-9);
}

TEST(RouteScale, ManyLegsStillFillTheRoom) {
    std::vector<std::pair<LegMethod, double>> wanted;
    for (int i = 0; i < 50; ++i) wanted.push_back({LegMethod::clipped, i % 7 == 0 ? 400.0 : 0.05});
    const RouteScale route = scale_route(legs_of(wanted), 250, 1150);
    ASSERT_EQ(route.legs.size(), 50u);
    double at = 250;
    for (const LegSpan& span : route.legs) {
        EXPECT_NEAR(span.left, at, 1e-6);
        EXPECT_GT(span.width(), 3);
        at = span.right;
    }
    EXPECT_NEAR(at, 1150, 1e-6);
}

TEST(RouteScale, ALegOfNoKnownLengthIsDrawnBroken) {
    auto legs = legs_of({{LegMethod::clipped, 10}, {LegMethod::buried_direct, 20}});
    legs[1].length = {};
    const RouteScale route = scale_route(legs, 0, 300);
    EXPECT_FALSE(route.legs[0].broken);
    EXPECT_TRUE(route.legs[1].broken);
    legs[0].length = {};
    EXPECT_EQ(scale_route(legs, 0, 300).units_per_metre, 0);
}

TEST(RouteScale, NoLegsGiveAnEmptyRoute) {
    const RouteScale route = scale_route({}, 10, 20);
    EXPECT_TRUE(route.legs.empty());
    EXPECT_FALSE(route.any_broken);
}

}  // namespace
}  // namespace toft::picture
