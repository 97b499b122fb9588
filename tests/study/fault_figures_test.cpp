#include "study/fault_figures.h"

#include "device/curve.h"
#include "network/loop.h"
#include "study/heat_figures.h"
#include "study/path.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::cable;
using support::measured;

class FaultFigures : public ::testing::Test {
protected:
    Figures<Silent> of(const RunScheme& scheme) {
        setting_ = support::prepared(job_);
        Figures<Silent> figures;
        work_out_currents(ledger_, setting_, scheme, figures);
        work_out_heat(ledger_, setting_, scheme, figures);
        return figures;
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
    Silent ledger_;
};

RunScheme with(Protective protective, const tables::Device& device = support::fuse(45)) {
    RunScheme scheme = support::scheme(cable(3, 10), protective, device);
    if (separate_serves(protective)) scheme.first().separate = &support::conductor(16);
    return scheme;
}

TEST_F(FaultFigures, TheLoopIsTheSuppliesAndTheRunsAtWorkingTemperature) {
    const auto f = of(with(Protective::core));
    const auto hot = fault_path(ledger_, setting_, with(Protective::core).first(),
                                {Heat::working, metres(30), 0});
    // With a core, the armour is a way a fault may take as well, and here it is the worse one.
    const Ohms by_armour = ohms(0.2) + magnitude(hot.line + hot.armour);
    EXPECT_NEAR(f.zs_far.number(), by_armour.number(), 1e-12);
    EXPECT_GT(f.zs_far, ohms(0.2) + magnitude(hot.line + hot.core));
}

TEST_F(FaultFigures, WhereTheArmourServesBesideACoreNoFaultIsToTheArmourAlone) {
    const auto f = of(with(Protective::core_and_armour));
    const auto hot = fault_path(ledger_, setting_, with(Protective::core_and_armour).first(),
                                {Heat::working, metres(30), 0});
    EXPECT_NEAR(f.zs_far.number(), (ohms(0.2) + magnitude(hot.line + hot.serving)).number(), 1e-12);
}

TEST_F(FaultFigures, TheFarEndSeesLessCurrentThanTheNearEnd) {
    for (Protective p : {Protective::armour, Protective::core, Protective::core_and_armour,
                         Protective::separate, Protective::armour_and_separate}) {
        const auto f = of(with(p));
        EXPECT_LT(f.le_far, f.le_near) << protective_word(p);
        EXPECT_LT(f.ln_far, f.ln_near) << protective_word(p);
        EXPECT_LT(f.le_least, f.le_far) << protective_word(p);
        EXPECT_LT(f.ln_least, f.ln_far) << protective_word(p);
    }
}

TEST_F(FaultFigures, TheNearEndSeesTheWholeFaultLevelOfTheOrigin) {
    job_.intake.pscc = measured(kiloamperes(2.5));
    const auto f = of(with(Protective::core));
    EXPECT_EQ(f.ln_near, kiloamperes(2.5));
    EXPECT_NEAR(f.le_near.number(), 1.1 * 230 / 0.2, 1e-9);
}

TEST_F(FaultFigures, ALargerExternalLoopSlowsTheDevice) {
    const RunScheme scheme = with(Protective::core_and_armour, support::fuse(63));
    const auto near = of(scheme);
    job_.intake.ze = measured(ohms(0.5));
    const auto far = of(scheme);
    EXPECT_LT(near.disconnection, far.disconnection);
    EXPECT_GT(near.zs_far, ohms(0.2));
}

TEST_F(FaultFigures, ABreakerThatNeedNotOperateLeavesTheCableToBurn) {
    job_.intake.ze = measured(ohms(2));
    const auto f = of(with(Protective::core_and_armour, support::breaker("C", 32)));
    EXPECT_TRUE(std::isinf(f.disconnection.number()));
    EXPECT_TRUE(std::isinf(f.heat_live));
    EXPECT_TRUE(std::isinf(f.heat_path));
}

TEST_F(FaultFigures, AResidualCurrentDeviceBoundsTheHeatOfAnEarthFault) {
    job_.intake.ze = measured(ohms(2));
    RunScheme scheme = with(Protective::core_and_armour, support::breaker("C", 32));
    scheme.rcd = &support::catalogue().run_rcds.front();
    const auto f = of(scheme);
    // The near end sees 1.1 x 230 / 2 = 126.5 A until the RCD has opened; the core is the weakest.
    const double energy = 126.5 * 126.5 * scheme.rcd->longest.value.number();
    EXPECT_NEAR(f.heat_path, energy / (143.0 * 143 * 100), 1e-9);
}

TEST_F(FaultFigures, HeatOfTheLiveCoresIsEnergyOverWithstand) {
    job_.intake.pscc = measured(kiloamperes(2));
    const auto f = of(with(Protective::core, support::fuse(45)));
    const tables::Device& fuse = support::fuse(45);
    const Name name{"I2t", "energy"};
    double worst = 0;
    for (Amperes i : {f.ln_near, f.le_near}) {
        worst = std::fmax(worst, device::let_through(ledger_, name, fuse, i).number());
    }
    // These faults end before anything is warm: the current stays above that of hardly warmed
    // conductors, and is never more than at first.
    const auto& at = f.at[0];
    using Least = StretchFaults<Silent>::Least;
    for (Amperes Least::*kind : {&Least::neutral, &Least::earth, &Least::armour}) {
        const Amperes first = at.working.*kind;
        const Amperes early = at.early.*kind;
        EXPECT_LT(early, first);
        EXPECT_LT(at.hot.*kind, early);
        for (Amperes i : {early, first}) {
            worst = std::fmax(worst, device::let_through(ledger_, name, fuse, i).number());
        }
    }
    EXPECT_NEAR(f.heat_live, worst / (143.0 * 143 * 10 * 10), 1e-12);
}

TEST_F(FaultFigures, AFaultThatLastsIsTakenWithConductorsHalfWayToTheirHottest) {
    job_ = support::job_with_legs({support::plain_leg(site::LegMethod::buried_direct, 120)});
    const tables::Device& fuse = support::fuse(100);
    const auto f = of(with(Protective::core_and_armour, fuse));
    const double stands = 143.0 * 143 * 10 * 10;
    const Name name{"I2t", "energy"};
    const auto energy = device::let_through(ledger_, name, fuse, f.at[0].hot.neutral).number();
    ASSERT_GT(energy, 0.1 * stands);
    EXPECT_GE(f.heat_live, energy / stands * (1 - 1e-12));
}

TEST_F(FaultFigures, AFaultToAnArmourThatDoesNotServeIsTheSmallest) {
    const auto by_core = of(with(Protective::core));
    EXPECT_LT(by_core.at[0].hot.armour, by_core.le_least);
    const auto by_both = of(with(Protective::core_and_armour));
    EXPECT_EQ(by_both.at[0].hot.armour, by_both.le_least);
}

TEST_F(FaultFigures, AThickerSeparateConductorNeverMakesThePathWorse) {
    RunScheme thin = with(Protective::armour_and_separate);
    thin.first().separate = &support::conductor(4);
    RunScheme thick = with(Protective::armour_and_separate);
    thick.first().separate = &support::conductor(16);
    EXPECT_LT(of(thick).zs_far, of(thin).zs_far);
    EXPECT_LE(of(thick).heat_path, of(thin).heat_path);
}

}  // namespace
}  // namespace toft::study
