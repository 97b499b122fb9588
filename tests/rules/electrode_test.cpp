#include "rules/electrode.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::BuildingEarthing;
using support::measured;

site::Job with_own(double ohm) {
    site::Job job = support::plain_job();
    job.buildings[1].electrode.resistance = measured(ohms(ohm));
    return job;
}

Finding<Silent> electrode_judged(const site::Job& job, BuildingEarthing earthing) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    EXPECT_TRUE(support::recorded_alike("electrode", job, s));
    return support::finding_of("electrode", job, s);
}

TEST(Electrode, FiftyVoltsAtThirtyMilliamperes) {
    const auto own = BuildingEarthing::own_electrode;
    EXPECT_NEAR(electrode_judged(with_own(50), own).limit, 1666.6666667, 1e-6);
    EXPECT_EQ(electrode_judged(with_own(50 / 0.03), own).verdict,
              Verdict::caution);  // a tie, but unstable
    EXPECT_EQ(electrode_judged(with_own(1667), own).verdict, Verdict::fails);
}

TEST(Electrode, AboveTwoHundredOhmItMayNotLast) {
    const auto own = BuildingEarthing::own_electrode;
    EXPECT_EQ(electrode_judged(with_own(200), own).verdict, Verdict::meets);
    const auto found = electrode_judged(with_own(201), own);
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_NE(std::string(found.says).find("200"), std::string::npos);
}

TEST(Electrode, ASharedOneIsTheHouses) {
    site::Job job = with_own(50);
    job.intake.earthing = site::Earthing::tt;
    job.intake.electrode = measured(ohms(250));
    EXPECT_EQ(electrode_judged(job, BuildingEarthing::shared_electrode).verdict, Verdict::caution);
    EXPECT_EQ(electrode_judged(job, BuildingEarthing::own_electrode).verdict, Verdict::meets);
    job.intake.electrode = {};
    job.intake.ze = measured(ohms(80));  // the loop goes through it
    EXPECT_DOUBLE_EQ(electrode_judged(job, BuildingEarthing::shared_electrode).value, 80);
}

TEST(Electrode, OneOfTheHouseThatNobodyMeasuredIsNotKnown) {
    site::Job job = with_own(50);
    job.intake.earthing = site::Earthing::tt;
    job.intake.electrode = {};
    job.intake.ze = {};
    const auto found = electrode_judged(job, BuildingEarthing::shared_electrode);
    EXPECT_EQ(found.verdict, Verdict::not_known);
    EXPECT_FALSE(found.limited) << "200 ohm is nobody's reading";
    EXPECT_NE(std::string(found.says).find("measure it"), std::string::npos);
    EXPECT_EQ(electrode_judged(job, BuildingEarthing::own_electrode).verdict, Verdict::meets)
        << "the building's own was read";
}

TEST(Electrode, WithoutOneThereIsNothingToJudge) {
    const auto found = electrode_judged(with_own(5000), BuildingEarthing::supply_earth);
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_FALSE(found.limited);
}

TEST(Electrode, DrySoilIsTakenAtItsWorst) {
    site::Job job = support::plain_job();
    job.ground.resistivity = support::between(ohm_metres(50), ohm_metres(3000));
    const auto wide = electrode_judged(job, BuildingEarthing::own_electrode);
    job.ground.resistivity = measured(ohm_metres(3000));
    EXPECT_DOUBLE_EQ(wide.value, electrode_judged(job, BuildingEarthing::own_electrode).value);
    EXPECT_EQ(wide.verdict, Verdict::caution);
}

}  // namespace
}  // namespace toft::rules
