#include "rules/fault_heat.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::rules {
namespace {

using study::Protective;
using support::measured;

site::Job fed(double loop_ohm, double length_m) {
    site::Job job =
        support::job_with_legs({support::plain_leg(site::LegMethod::clipped, length_m)});
    job.intake.ze = measured(ohms(loop_ohm));
    job.intake.line_neutral_loop = measured(ohms(loop_ohm));
    return job;
}

Finding<Silent> fault_heat_judged(const site::Job& job, const study::RunScheme& scheme) {
    EXPECT_TRUE(support::recorded_alike("fault-heat", job, scheme));
    return support::finding_of("fault-heat", job, scheme);
}

TEST(FaultHeat, AFuseAboveItsCurveLetsThroughWhatItsLastPointDoes) {
    // 32 A fuse: 350 A in 0.1 s; all faults of this run are larger. The 1.5 mm2 core is the
    // weakest.
    const auto s = support::scheme(support::cable(2, 1.5), Protective::armour, support::fuse(32));
    const auto found = fault_heat_judged(fed(0.1, 5), s);
    EXPECT_NEAR(found.use, 350 * 350 * 0.1 / (143 * 143 * 1.5 * 1.5), 1e-9);
    EXPECT_EQ(found.verdict, Verdict::meets);
}

TEST(FaultHeat, ABreakerLetsThroughTheLimitOfItsClass) {
    const auto s =
        support::scheme(support::cable(2, 1.5), Protective::armour, support::breaker("B", 32, 6));
    // 2530 A at the origin, 0.1 s would be 640 kA2s; up to 3 kA the class allows 18.
    EXPECT_NEAR(fault_heat_judged(fed(0.1, 5), s).use, 18000 / (143 * 143 * 1.5 * 1.5), 1e-9);
}

TEST(FaultHeat, SteelArmourHasItsOwnConstant) {
    // 100 A fuse: 1450 A in 0.1 s. Armour of 15 mm2 stands 46 x 15 squared, the core 143 x 1.5.
    study::RunScheme s =
        support::scheme(support::cable(2, 25), Protective::armour, support::fuse(100));
    const double armour = 46.0 * 46 * 42 * 42;
    const double core = 143.0 * 143 * 25 * 25;
    EXPECT_LT(armour, core);
    EXPECT_NEAR(fault_heat_judged(fed(0.05, 5), s).use, 1450 * 1450 * 0.1 / armour, 1e-9);
}

TEST(FaultHeat, TheArmourMustSurviveEvenWhereItDoesNotServe) {
    study::RunScheme s =
        support::scheme(support::cable(3, 25), Protective::core, support::fuse(100));
    EXPECT_NEAR(fault_heat_judged(fed(0.05, 5), s).use,
                1450 * 1450 * 0.1 / std::fmin(46.0 * 46 * 62 * 62, 143.0 * 143 * 25 * 25), 1e-9);
}

TEST(FaultHeat, SmallSeparateConductorsBurn) {
    study::RunScheme s =
        support::scheme(support::cable(2, 25), Protective::separate, support::fuse(100));
    s.first().separate = &support::conductor(2.5);
    EXPECT_NEAR(fault_heat_judged(fed(0.05, 5), s).use,
                1450 * 1450 * 0.1 / (143.0 * 143 * 2.5 * 2.5), 1e-6);
    EXPECT_EQ(fault_heat_judged(fed(0.05, 5), s).verdict, Verdict::fails);
    s.first().separate = &support::conductor(4);
    EXPECT_EQ(fault_heat_judged(fed(0.05, 5), s).verdict, Verdict::meets);
}

TEST(FaultHeat, ADeviceThatNeedNotOperateHeatsForEver) {
    const auto s =
        support::scheme(support::cable(2, 16), Protective::armour, support::breaker("C", 63));
    const auto found = fault_heat_judged(fed(0.8, 60), s);
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_TRUE(std::isinf(found.use));
}

TEST(FaultHeat, AnRcdSavesTheEarthPathButNotTheLiveCores) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = measured(ohms(50));
    study::RunScheme s =
        support::scheme(support::cable(2, 10), Protective::armour, support::fuse(32));
    s.earthing = study::BuildingEarthing::shared_electrode;
    EXPECT_TRUE(
        std::isinf(fault_heat_judged(job, s).use));  // three amperes to earth operate no fuse
    s.rcd = &support::catalogue().run_rcds.front();
    EXPECT_EQ(fault_heat_judged(job, s).verdict, Verdict::meets);
    job.intake.line_neutral_loop = measured(ohms(3));  // nor do seventy between line and neutral
    EXPECT_TRUE(std::isinf(fault_heat_judged(job, s).use));
}

TEST(FaultHeat, MetAtAllThatIsWithstoodAndFailedAbove) {
    EXPECT_DOUBLE_EQ(
        fault_heat_judged(fed(0.2, 20), support::scheme(support::cable(2, 10), Protective::armour,
                                                        support::fuse(32)))
            .limit,
        1);
}

}  // namespace
}  // namespace toft::rules
