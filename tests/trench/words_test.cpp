#include "trench/words.h"

#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

namespace toft::trench {
namespace {

TEST(Words, LengthsAsAnybodySaysThem) {
    EXPECT_EQ(length_words(support::measured(metres(21))), "21 m");
    EXPECT_EQ(length_words(support::between(metres(46), metres(52))), "46 to 52 m");
    EXPECT_EQ(length_words({}), "not known");
    EXPECT_EQ(volume_words(cubic_metres(4.376)), "4.4 m³");
    EXPECT_EQ(metres_to_buy(metres(22.05)), "22.5 m");
    EXPECT_EQ(metres_to_buy(metres(22)), "22 m");
}

TEST(Words, LegsInTheGroundSayWhatIsOverThem) {
    const Works works = works_of_example("demo");
    EXPECT_EQ(leg_words(works, works.legs[1]), "buried direct under lawn, 0.6 m deep");
    EXPECT_EQ(leg_words(works, works.legs[0]), "clipped");
    EXPECT_EQ(run_words(works, 0), "A: the house to Potter's studio");
}

TEST(Words, ALegInAnothersTrenchSaysWhose) {
    const Works works = works_of_example("tansy-bank");
    int said = 0;
    for (const LegWork& leg : works.legs) {
        said += leg_words(works, leg).find("in the trench of ") != std::string::npos;
    }
    EXPECT_EQ(said, 1);
}

TEST(Words, WhatIsNotKnownIsSaid) {
    site::Job job = support::job_with_legs({support::plain_leg(site::LegMethod::overhead),
                                            support::plain_leg(site::LegMethod::buried_direct)});
    job.runs[0].legs[0].height = {};
    job.runs[0].legs[1].depth = {};
    const Works works = works_of_job(job);
    EXPECT_NE(leg_words(works, works.legs[0]).find("height not known"), std::string::npos);
    EXPECT_NE(leg_words(works, works.legs[1]).find("depth not stated"), std::string::npos);
}

TEST(Words, EveryWayToFixALegHasWords) {
    for (std::size_t i = 0; i < site::words<site::LegMethod>().size(); ++i) {
        site::Leg leg;
        leg.method = static_cast<site::LegMethod>(i);
        EXPECT_EQ(fixed_words(leg) == "the ground", site::buried(leg.method));
    }
}

TEST(Words, PipesThatTheSurveyStatesAreToldWithTheirBuilding) {
    const std::vector<Service> all = services_of(works_of_example("demo"));
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].building, "Potter's studio");
    EXPECT_EQ(all[0].says, "water pipe (copper), out of the ground");
}

}  // namespace
}  // namespace toft::trench
