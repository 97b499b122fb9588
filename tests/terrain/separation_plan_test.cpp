#include "terrain/separation_plan.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::terrain {
namespace {

const Metres arm = metres(2.5);

drawing::Scene drawn(const answer::SeparationAnswer& separation, double width) {
    answer::GroundAnswer ground = looked_at_ground();
    ground.sides[0].separation = separation;
    const site::Job job = looked_at_job();
    return separation_plan_picture({job, ground, 0, arm}, width);
}

answer::SeparationAnswer island() {
    answer::SeparationAnswer s = looked_at_separation();
    s.bridges = {{"outside tap of the house", "", false, 8.0}};
    s.island = true;
    return s;
}

TEST(SeparationPlan, SaysHowTheTwoEarthsStand) {
    EXPECT_EQ(islands_of(island(), arm), Islands::apart);
    answer::SeparationAnswer s = island();
    s.needed_m = 21.5;
    EXPECT_EQ(islands_of(s, arm), Islands::carried);
    s = island();
    s.bridges[0].distance_m = 1.6;
    EXPECT_EQ(islands_of(s, arm), Islands::within_reach);
    s.bridges.push_back({"water pipe", "", true, {}});
    EXPECT_EQ(islands_of(s, arm), Islands::joined);
}

TEST(SeparationPlan, WhatIsNotKnownIsNeverApart) {
    answer::SeparationAnswer s = island();
    s.bridges[0].distance_m.reset();
    EXPECT_EQ(islands_of(s, arm), Islands::not_known);
    s = island();
    s.island = false;
    EXPECT_EQ(islands_of(s, arm), Islands::not_known);
    for (const double odd : {no_number, no_end}) {
        s = island();
        s.needed_m = odd;
        EXPECT_EQ(islands_of(s, arm), Islands::not_known);
        s = island();
        s.distance_m = odd;
        EXPECT_EQ(islands_of(s, arm), Islands::not_known);
        s = island();
        s.bridges[0].distance_m = odd;
        EXPECT_EQ(islands_of(s, arm), Islands::not_known);
    }
}

RC_GTEST_PROP(SeparationPlan, AnotherBridgeNeverMakesThemMoreApart, ()) {
    const auto some_bridge = [] {
        answer::BridgeAnswer b{"thing", "", *rc::gen::inRange(0, 4) == 0, {}};
        if (*rc::gen::inRange(0, 3) > 0) b.distance_m = *rc::gen::inRange(0, 100) / 10.0;
        return b;
    };
    answer::SeparationAnswer s = island();
    const int count = *rc::gen::inRange(0, 4);
    for (int i = 0; i < count; ++i) s.bridges.push_back(some_bridge());
    const Islands before = islands_of(s, arm);
    s.bridges.push_back(some_bridge());
    const Islands after = islands_of(s, arm);
    RC_ASSERT(after != Islands::apart || before == Islands::apart);
    RC_ASSERT(before != Islands::joined || after == Islands::joined);
}

TEST(SeparationPlan, ShowsDistancesAndNamesEachBridge) {
    const drawing::Scene scene = drawn(looked_at_separation(), 794);
    for (const char* words :
         {"21 m", "needed: 8.3 m", "joined by metal: water pipe, copper",
          "chain-link fence: 1.6 m away or more", "screen of the data cable: not known how near",
          "arm's reach: 2.5 m", "sizes are not surveyed"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
    EXPECT_EQ(picture::count_kind(scene.items, "bridge"), 4);
}

TEST(SeparationPlan, NoWordsCoverOthersAtAnyWidth) {
    for (const double width : looked_at_widths()) {
        for (const auto& s : {looked_at_separation(), island()}) {
            const drawing::Scene scene = drawn(s, width);
            EXPECT_EQ(clashes_of(scene), "") << width;
            EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
        }
    }
}

std::vector<answer::SeparationAnswer> odd_separations() {
    std::vector<answer::SeparationAnswer> all(9, looked_at_separation());
    all[0].distance_m = 0;
    all[1].distance_m = no_end;
    all[2].needed_m = no_end;
    all[3].needed_m = 400;
    all[4] = {};
    all[5].house_radius_m = no_number;
    all[5].transferred_high = no_number;
    all[6].bridges.assign(14, {picture::hostile_name(), picture::hostile_name(), true, {}});
    all[7].distance_m = 0.4;
    all[7].bridges[1].distance_m = 80;
    all[8].distance_m = 900;
    return all;
}

TEST(SeparationPlan, OddSeparationsStillGiveASheet) {
    const auto all = odd_separations();
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const double width : {320.0, 794.0, 1400.0}) {
            const drawing::Scene scene = drawn(all[i], width);
            EXPECT_EQ(clashes_of(scene), "") << i << " " << width;
            const std::string svg = drawing::to_svg(scene);
            EXPECT_EQ(svg.find("is missing"), std::string::npos) << i << " " << width;
            EXPECT_EQ(svg.find("<script"), std::string::npos);
        }
    }
}

TEST(SeparationPlan, WhereNoDistanceWasJudgedItSaysWhy) {
    answer::SeparationAnswer s = island();
    EXPECT_FALSE(tells(drawn(s, 794), "No distance was judged"));
    s.needed_m = 0;
    EXPECT_TRUE(tells(drawn(s, 794), "No distance was judged"));
    EXPECT_FALSE(tells(drawn(s, 794), "needed:"));
}

TEST(SeparationPlan, WithoutBridgesItSaysThatNobodyNamedOne) {
    answer::SeparationAnswer s = island();
    s.bridges.clear();
    EXPECT_TRUE(tells(drawn(s, 794), "What nobody has looked for"));
}

}  // namespace
}  // namespace toft::terrain
