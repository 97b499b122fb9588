#include "tolerance/facts.h"

#include "varying.h"

#include <gtest/gtest.h>

namespace toft::tolerance {
namespace {

const Figure* named(const std::vector<Figure>& all, const std::string& pointer) {
    for (const Figure& f : all) {
        if (f.pointer == pointer) return &f;
    }
    return nullptr;
}

TEST(Facts, AFigureIsReadAndSetInTheUnitOfItsKey) {
    site::Job job = support::plain_job();
    job.intake.pscc = support::measured(amperes(1500));
    const auto all = figures_of(place_of(job));
    const Figure* level = named(all, "/intake/pscc_ka");
    ASSERT_NE(level, nullptr);
    EXPECT_DOUBLE_EQ(level->low, 1.5);
    level->set(job, 1, 2);
    EXPECT_EQ(job.intake.pscc.low, amperes(1000));
    EXPECT_EQ(job.intake.pscc.high, amperes(2000));
    EXPECT_EQ(job.intake.pscc.standing, site::Standing::measured);
}

TEST(Facts, EveryFigureIsSetWhereItIsRead) {
    const site::Job plain = support::plain_job();
    for (const Figure& f : figures_of(place_of(plain))) {
        site::Job job = plain;
        f.set(job, 3, 4);
        const auto again = figures_of(place_of(job));
        const Figure* set = named(again, f.pointer);
        ASSERT_NE(set, nullptr);
        EXPECT_TRUE(set->known) << f.pointer;
        EXPECT_DOUBLE_EQ(set->low, 3) << f.pointer;
        EXPECT_DOUBLE_EQ(set->high, 4) << f.pointer;
    }
}

TEST(Facts, AFactNobodyGaveIsAssumedOnceItIsSet) {
    site::Job job = support::plain_job();
    job.ground.temperature = {};
    const auto all = figures_of(place_of(job));
    const Figure* warm = named(all, "/ground/temperature_c");
    ASSERT_NE(warm, nullptr);
    EXPECT_FALSE(warm->known);
    warm->set(job, 12, 18);
    EXPECT_EQ(job.ground.temperature.standing, site::Standing::assumed);
}

TEST(Facts, BehindOtherRunsTheIntakeIsNoFigureOfTheRun) {
    const site::Job job = support::plain_job();
    const study::Incoming incoming;
    Place place = place_of(job);
    EXPECT_NE(named(figures_of(place), "/intake/ze_ohm"), nullptr);
    place.at.incoming = &incoming;
    EXPECT_EQ(named(figures_of(place), "/intake/ze_ohm"), nullptr);
    EXPECT_NE(named(figures_of(place), "/runs/0/legs/0/length_m"), nullptr);
}

TEST(Facts, ReadingsOfTheGroundComeBeforeAStatedResistivity) {
    site::Job job = support::plain_job();
    EXPECT_NE(named(figures_of(place_of(job)), "/ground/resistivity_ohm_m"), nullptr);
    job.ground.rods = {{metres(1.2), millimetres(14), ohms(60)}};
    EXPECT_EQ(named(figures_of(place_of(job)), "/ground/resistivity_ohm_m"), nullptr);
}

TEST(Facts, AllLoadsGrowTogether) {
    site::Job job = support::plain_job();
    const Amperes before = job.buildings[1].load.high;
    loads_times(place_of(job))(job, 1.5, 1.5);
    EXPECT_EQ(job.buildings[1].load.high, before * 1.5);
}

}  // namespace
}  // namespace toft::tolerance
