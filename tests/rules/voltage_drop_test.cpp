#include "rules/voltage_drop.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using support::measured;

Finding<Silent> voltage_drop_judged(const site::Job& job, double section = 10) {
    const auto s =
        support::scheme(support::cable(2, section), study::Protective::armour, support::fuse(32));
    EXPECT_TRUE(support::recorded_alike("voltage-drop", job, s));
    return support::finding_of("voltage-drop", job, s);
}

site::Job long_run(double length_m) {
    return support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct, length_m)});
}

TEST(VoltageDrop, TheRunHasTwoAndAHalfPerCentUnlessWished) {
    EXPECT_DOUBLE_EQ(voltage_drop_judged(long_run(30)).limit, 2.5);
    site::Job job = long_run(30);
    job.wishes.drop_run = measured(4.0);
    EXPECT_DOUBLE_EQ(voltage_drop_judged(job).limit, 4);
    job.wishes.drop_run = measured(9.0);  // a wish does not lift what any load may lose
    EXPECT_DOUBLE_EQ(voltage_drop_judged(job).limit, 5);
}

TEST(VoltageDrop, WithLampsBehindItNoMoreThanThree) {
    site::Job job = long_run(30);
    job.wishes.drop_run = measured(4.0);
    site::Circuit lights;
    lights.kind = site::CircuitKind::lighting;
    lights.load_w = measured(100.0);
    job.buildings[1].circuits = {lights};
    EXPECT_DOUBLE_EQ(voltage_drop_judged(job).limit, 3);
}

TEST(VoltageDrop, ATieIsMetAndAHairBeyondFails) {
    const double drop_at_30 = voltage_drop_judged(long_run(30)).value;
    const double tie =
        30 * 2.5 / drop_at_30;  // resistance only at unity power factor: proportional
    EXPECT_NEAR(voltage_drop_judged(long_run(tie)).use, 1, 1e-9);
    EXPECT_EQ(voltage_drop_judged(long_run(tie * (1 - 1e-6))).verdict, Verdict::meets);
    EXPECT_EQ(voltage_drop_judged(long_run(tie * (1 + 1e-6))).verdict, Verdict::fails);
}

TEST(VoltageDrop, ThickerCoresLoseLess) {
    double last = 1e9;
    for (double section : {1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0}) {
        const double drop = voltage_drop_judged(long_run(30), section).value;
        EXPECT_LT(drop, last) << section;
        last = drop;
    }
}

}  // namespace
}  // namespace toft::rules
