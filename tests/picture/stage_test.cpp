#include "picture/stage.h"

#include "picture/looking.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

site::Metalwork pipe(site::Metal what) {
    site::Metalwork metal;
    metal.what = what;
    return metal;
}

answer::SchemeAnswer with_bonds(const std::vector<std::string>& names) {
    answer::SchemeAnswer scheme;
    for (const std::string& name : names) scheme.building.bonding.push_back({name, 6, 10});
    return scheme;
}

TEST(Stage, BondsGoToThePartsTheyAreFor) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = {pipe(site::Metal::drain), pipe(site::Metal::water_pipe)};
    const answer::SchemeAnswer scheme = with_bonds({"water pipe"});
    const Stage stage = set_stage(job, &scheme);
    ASSERT_EQ(stage.parts.size(), 2u);
    EXPECT_EQ(stage.parts[0].what, "water pipe");
    EXPECT_EQ(stage.parts[0].bond, &scheme.building.bonding[0]);
    EXPECT_EQ(stage.parts[1].bond, nullptr);
}

TEST(Stage, OfTwoPartsOfANameTheOneThatCanBringInAPotentialIsBonded) {
    site::Job job = support::plain_job();
    auto& metalwork = job.buildings[1].metalwork;
    metalwork = {pipe(site::Metal::water_pipe), pipe(site::Metal::water_pipe),
                 pipe(site::Metal::water_pipe)};
    metalwork[0].insulating_section = site::Answer::yes;
    metalwork[1].resistance_to_met = support::measured(ohms(900000));
    const answer::SchemeAnswer scheme = with_bonds({"water pipe"});
    const Stage stage = set_stage(job, &scheme);
    EXPECT_EQ(stage.parts[0].metal, &job.buildings[1].metalwork[2]);
    EXPECT_TRUE(stage.parts[0].bond);
    EXPECT_FALSE(stage.parts[1].bond);
    EXPECT_FALSE(stage.parts[2].bond);
}

TEST(Stage, ABondForSomethingNotSurveyedIsNotLost) {
    const site::Job job = support::plain_job();
    const answer::SchemeAnswer scheme = with_bonds({"metalwork that enters, if any"});
    const Stage stage = set_stage(job, &scheme);
    ASSERT_EQ(stage.parts.size(), 1u);
    EXPECT_EQ(stage.parts[0].kind, PartKind::not_surveyed);
    EXPECT_TRUE(stage.parts[0].bond);
}

TEST(Stage, AMetalBuildingIsAPartOfItsOwn) {
    site::Job job = support::plain_job();
    job.buildings[1].construction = site::Construction::steel_container;
    const Stage stage = set_stage(job, nullptr);
    ASSERT_EQ(stage.parts.size(), 1u);
    EXPECT_EQ(stage.parts[0].kind, PartKind::frame);
    EXPECT_EQ(stage.parts[0].what, "steel container");
}

TEST(Stage, EverythingStandsOnTheSheetInOrder) {
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        const answer::SchemeAnswer* scheme =
            one.answer.schemes.empty() ? nullptr : &one.answer.schemes.front();
        const Stage stage = set_stage(one.job, scheme);
        EXPECT_GE(stage.house_box.left, margin);
        EXPECT_LT(stage.house_box.right, stage.far_box.left);
        EXPECT_LE(stage.far_box.right, sheet_wide - margin);
        EXPECT_LT(stage.route.end, stage.far_box.right);
        EXPECT_LT(stage.eaves, stage.ground);
    }
}

TEST(Stage, TheDeepestTrenchStaysInTheDrawnGround) {
    for (const double depth : {0.05, 0.6, 3.0}) {
        site::Job job = support::plain_job();
        job.runs[0].legs[0].depth = support::measured(metres(depth));
        const Stage stage = set_stage(job, nullptr);
        EXPECT_LT(stage.ground + depth * stage.units_per_metre_deep, stage.soil_foot - 20);
    }
}

}  // namespace
}  // namespace toft::picture
