#include "soil/driven_rod.h"

#include "soil/soundings.h"
#include "support/grounds.h"

#include <rapidcheck/gtest.h>

namespace toft::soil {
namespace {

DrivenRod rod_of(double length, double resistance) {
    return {metres(length), metres(0.016), ohms(resistance)};
}

TEST(DrivenRod, TurnsTheFormulaOfOneRodRound) {
    // 1.2 m of 16 mm in 100 ohm metres have 71.6 ohm (BS 7430, 9.5.3).
    EXPECT_NEAR(apparent_resistivity(rod_of(1.2, 71.6)).number(), 100, 0.1);
    // MIL-HDBK-419A vol. 2, http://navalfacilities.tpub.com/hdbk419a_vol2/hdbk419a_vol20027.htm:
    // ten feet of three-quarter inch rod in 100 ohm metres have 32 ohm.
    EXPECT_NEAR(apparent_resistivity({metres(3.048), metres(0.01905), ohms(32)}).number(), 100, 1);
}

TEST(DrivenRod, NarrowsARangeThatItAgreesWith) {
    const auto update = narrowed({ohm_metres(20), ohm_metres(105)}, rod_of(1.2, 71.6));
    ASSERT_TRUE(update);
    EXPECT_FALSE(update->contradicts);
    EXPECT_NEAR(update->range.low.number(), 90, 0.2);
    EXPECT_NEAR(update->range.high.number(), 105, 1e-9);
}

TEST(DrivenRod, BeatsARangeThatItContradicts) {
    const auto update = narrowed({ohm_metres(20), ohm_metres(50)}, rod_of(1.2, 71.6));
    ASSERT_TRUE(update);
    EXPECT_TRUE(update->contradicts);
    EXPECT_NEAR(update->range.low.number(), 90, 0.2);
    EXPECT_NE(update->says.find("does not agree"), std::string::npos);
    const auto open = narrowed({ohm_metres(20), ohm_metres(50), false, true}, rod_of(1.2, 71.6));
    EXPECT_FALSE(open->contradicts);
}

TEST(DrivenRod, IsSolvedInTwoLayersAndRefusesMore) {
    const DrivenRod rod = rod_of(2.4, 1);
    EXPECT_NEAR(rod_over(two(100, 1, 300), rod)->number(),
                field::joined(field::layers(100, 300, 1), {field::rod(0, 0, 2.4, 0.016)}), 0.5);
    EXPECT_NEAR(rod_over(one(100), rod)->number(), 40.2, 0.5);
    EXPECT_FALSE(rod_over(three(100, 1, 300, 1, 30), rod));
}

TEST(DrivenRod, KeepsTheSoilsThatAgreeWithIt) {
    const SoilFit fit = fit_of(read_over(two(150, 1.5, 40), {0.5, 1, 2, 4, 8}));
    const double expected = rod_over(fit.best, rod_of(2.4, 1))->number();
    const auto check = held_against(fit.plausible, rod_of(2.4, expected));
    ASSERT_TRUE(check);
    EXPECT_FALSE(check->contradicts);
    EXPECT_GE(check->agree, 1u);
    EXPECT_NEAR(check->factor, 1, 1e-9);
    EXPECT_GT(check->unjudged, 0u);  // those with other ground far below
    EXPECT_EQ(check->soils.size(), check->agree + check->unjudged);
}

TEST(DrivenRod, DropsTheSoilsThatDoNot) {
    const std::vector<field::Strata> soils{one(100), one(60), one(150), two(100, 4, 120)};
    const auto check = held_against(soils, rod_of(1.2, 70.7));
    ASSERT_TRUE(check);
    EXPECT_EQ(check->agree, 2u);
    ASSERT_EQ(check->soils.size(), 2u);
    EXPECT_EQ(check->soils[1].layers.size(), 1u);
}

TEST(DrivenRod, ScalesAllSoilsWhereNoneAgrees) {
    const auto check = held_against({two(100, 1, 300), one(200)}, rod_of(1.2, 300));
    ASSERT_TRUE(check);
    EXPECT_TRUE(check->contradicts);
    ASSERT_EQ(check->soils.size(), 2u);
    for (const field::Strata& soil : check->soils) {
        EXPECT_NEAR(rod_over(soil, rod_of(1.2, 1))->number(), 300, 1e-6);
    }
    EXPECT_NE(check->says.find("contradicts"), std::string::npos);
}

TEST(DrivenRod, RefusesWhatIsNoRodAndWhatNothingCanJudge) {
    EXPECT_EQ(faults_of({metres(0), metres(0), ohms(0), 0}).size(), 4u);
    EXPECT_EQ(faults_of({metres(0.1), metres(0.016), ohms(10)}).size(), 1u);
    EXPECT_FALSE(narrowed({}, rod_of(-1, 10)));
    EXPECT_FALSE(held_against({}, rod_of(1.2, 70)));
    EXPECT_FALSE(held_against({three(1, 1, 2, 1, 3)}, rod_of(1.2, 70)));
}

RC_GTEST_PROP(DrivenRodLaws, TheSeenResistivityGrowsAsTheReading, ()) {
    const double length = *rc::gen::inRange(3, 100) / 10.0;
    const double r = *rc::gen::inRange(10, 100000) / 10.0;
    const auto twice = apparent_resistivity(rod_of(length, 2 * r));
    RC_ASSERT(std::fabs(twice / apparent_resistivity(rod_of(length, r)) - 2) < 1e-12);
}

}  // namespace
}  // namespace toft::soil
