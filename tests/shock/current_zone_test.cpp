#include "shock/current_zone.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::shock {
namespace {

using support::shock_tables;

CurrentZone zone(double milliamps, double time) {
    return current_zone(shock_tables(), milliamperes(milliamps), seconds(time));
}

TEST(CurrentZone, GoesByCurrentAndTime) {
    EXPECT_EQ(zone(0.4, 100), CurrentZone::ac1);
    EXPECT_EQ(zone(4, 100), CurrentZone::ac2);
    EXPECT_EQ(zone(30, 100), CurrentZone::ac3);
    EXPECT_EQ(zone(30, 0.1), CurrentZone::ac2);
    EXPECT_EQ(zone(45, 10), CurrentZone::ac41);
    EXPECT_EQ(zone(79, 10), CurrentZone::ac42);
    EXPECT_EQ(zone(81, 10), CurrentZone::ac43);
    EXPECT_STREQ(zone_word(CurrentZone::ac41), "AC-4.1");
}

TEST(CurrentZone, ALineIsStraightOnLogPaperAndEndsFlat) {
    const auto c1 = [](double time) {
        return line_at(shock_tables(), tables::ZoneLine::c1, seconds(time)).number();
    };
    EXPECT_NEAR(c1(std::sqrt(0.1 * 0.2)), std::sqrt(0.4 * 0.2), 1e-12);
    EXPECT_EQ(c1(0.001), 0.5);
    EXPECT_EQ(c1(10000), 0.04);
}

/// The older edition drew line b as 10 mA + 10 mA s/t, capped at 200; the newer lies at or below
/// it.
TEST(CurrentZone, LineBIsNoHigherThanThatOfTheOlderEdition) {
    for (double time : {0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 3.0, 10.0}) {
        const double older = std::fmin(0.2, 0.010 + 0.010 / time);
        EXPECT_LE(line_at(shock_tables(), tables::ZoneLine::b, seconds(time)).number(), older)
            << time;
    }
}

RC_GTEST_PROP(CurrentZoneLaws, MoreCurrentOrMoreTimeNeverLeadsToALowerZone, ()) {
    const double current = std::pow(10, *rc::gen::inRange(-100, 350) / 100.0);
    const double time = std::pow(10, *rc::gen::inRange(-300, 200) / 100.0);
    const CurrentZone before = zone(current, time);
    RC_ASSERT(zone(current * 1.2, time) >= before);
    RC_ASSERT(zone(current, time * 1.2) >= before);
}

}  // namespace
}  // namespace toft::shock
