#include "walk/apart.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

using support::measured;

site::Job reaching(site::Fact<Metres> reach) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = reach;
    return job;
}

TEST(ApartSteps, WithinArmsReachAnElectrodeApartIsRuledOut) {
    EXPECT_EQ(bearing_of(walked(reaching(measured(metres(2.5)))), "reach", Choice::own_electrode),
              Bearing::neutral);
    const Walk near = walked(reaching(measured(metres(2.4))));
    EXPECT_EQ(standing_of(near, Choice::own_electrode), Standing::ruled_out);
    EXPECT_EQ(standing_of(near, Choice::supply_earth), Standing::open);
}

TEST(ApartSteps, AReachNobodyMeasuredIsNotKnown) {
    const Walk w = walked(reaching({}));
    EXPECT_EQ(standing_of(w, Choice::own_electrode), Standing::not_known);
    EXPECT_TRUE(holds(w.conclusion, "not known"));
}

TEST(ApartSteps, AnElectrodeForeseenIsAMatterOfJudgementUntilItIsTested) {
    site::Job job = support::plain_job();
    EXPECT_EQ(bearing_of(walked(job), "ground", Choice::own_electrode), Bearing::speaks_against);
    job.buildings[1].electrode.resistance = measured(ohms(40));
    EXPECT_EQ(bearing_of(walked(job), "ground", Choice::own_electrode), Bearing::neutral);
    EXPECT_EQ(standing_of(walked(job), Choice::own_electrode), Standing::open);
    job.buildings[1].electrode.resistance = measured(ohms(400));
    EXPECT_EQ(standing_of(walked(job), Choice::own_electrode), Standing::judgement);
    job.buildings[1].electrode.resistance = measured(ohms(1700));
    EXPECT_EQ(standing_of(walked(job), Choice::own_electrode), Standing::ruled_out);
}

/// 50 V over 30 mA, as the note to Table 41.5 is quoted.
TEST(ApartSteps, TheLargestElectrodeIsThatOfThirtyMilliamperes) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    EXPECT_NEAR(largest_electrode(facts_of(setting)).number(), 1667, 0.4);
}

TEST(ApartSteps, NoRodIsPromisedInRockOrInGroundNobodyNamed) {
    site::Job job = support::plain_job();
    job.ground.soil = "rock";
    EXPECT_TRUE(holds(find_step(walked(job), "ground")->ruling[Choice::own_electrode].why, "rock"));
    job.ground.soil = "";
    job.ground.resistivity = {};
    const Walk w = walked(job);
    EXPECT_EQ(find_step(w, "ground")->ruling.known, Known::unknown);
    EXPECT_GE(standing_of(w, Choice::own_electrode), Standing::judgement);
}

TEST(ApartSteps, TheHousesElectrodeIsAskedForOnTtOnly) {
    EXPECT_EQ(find_step(walked(shed_on(site::Earthing::tn_c_s)), "house-electrode"), nullptr);
    site::Job job = shed_on(site::Earthing::tt);
    EXPECT_EQ(standing_of(walked(job), Choice::shared_electrode), Standing::open);
    job.intake.electrode = measured(ohms(250));
    EXPECT_EQ(standing_of(walked(job), Choice::shared_electrode), Standing::judgement);
    job.intake.electrode = measured(ohms(1700));
    EXPECT_EQ(standing_of(walked(job), Choice::shared_electrode), Standing::ruled_out);
    job.intake.electrode = {};
    job.intake.ze = {};
    EXPECT_EQ(standing_of(walked(job), Choice::shared_electrode), Standing::judgement);
}

}  // namespace
}  // namespace toft::walk
