#include "rules/separation.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::rules {
namespace {

using site::Answer;
using site::ComesFrom;
using study::BuildingEarthing;
using support::measured;

Finding<Silent> separation_judged(const site::Job& job,
                                  BuildingEarthing earthing = BuildingEarthing::own_electrode) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    EXPECT_TRUE(support::recorded_alike("separation", job, s));
    return support::finding_of("separation", job, s);
}

site::Job reaching(double reach_m) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = measured(metres(reach_m));
    return job;
}

site::Job piped(ComesFrom from, Answer section, Answer bonded) {
    site::Job job = support::plain_job();
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.comes_from = from;
    pipe.insulating_section = section;
    pipe.bonded_at_house = bonded;
    job.buildings[1].metalwork = {pipe};
    return job;
}

TEST(Separation, ArmsReachIsTwoAndAHalfMetres) {
    EXPECT_EQ(separation_judged(reaching(2.5)).verdict, Verdict::meets);  // a tie
    EXPECT_EQ(separation_judged(reaching(2.49)).verdict, Verdict::fails);
    EXPECT_EQ(separation_judged(reaching(6)).verdict, Verdict::meets);
    site::Job own_neutral = reaching(6);
    own_neutral.intake.earthing = site::Earthing::tn_s;
    EXPECT_NEAR(separation_judged(own_neutral).use, 2.5 / 6, 1e-12);
    EXPECT_NE(std::string(separation_judged(reaching(1)).says).find("arm's reach"),
              std::string::npos);
}

TEST(Separation, AnElectrodeTooNearACombinedEarthIsACaution) {
    site::Job job = support::plain_job();
    EXPECT_EQ(separation_judged(job).verdict, Verdict::meets);
    EXPECT_NEAR(separation_judged(job).value, 20, 1e-12);
    job.buildings[1].electrode.from_house_earth = measured(metres(3));
    const auto near = separation_judged(job);
    EXPECT_EQ(near.verdict, Verdict::caution);
    EXPECT_NEAR(near.value, 3, 1e-12);
    EXPECT_GT(near.limit, 3);
    EXPECT_NE(std::string(near.says).find("loses its neutral"), std::string::npos);
    job.intake.earthing = site::Earthing::tn_s;
    EXPECT_EQ(separation_judged(job).verdict, Verdict::meets);
}

TEST(Separation, UnknownReachIsNoReachAtAll) {
    site::Job job = support::plain_job();
    job.buildings[1].reach_of_house_earth = {};
    const auto found = separation_judged(job);
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_DOUBLE_EQ(found.value, 0);
    EXPECT_TRUE(std::isinf(found.use));
}

TEST(Separation, MetalThatRunsOnBetweenTheEarthsRefusesIt) {
    EXPECT_EQ(separation_judged(piped(ComesFrom::house, Answer::no, Answer::no)).verdict,
              Verdict::fails);
    EXPECT_EQ(separation_judged(piped(ComesFrom::ground, Answer::no, Answer::yes)).verdict,
              Verdict::fails);
    EXPECT_EQ(separation_judged(piped(ComesFrom::ground, Answer::no, Answer::unknown)).verdict,
              Verdict::fails);
    EXPECT_EQ(separation_judged(piped(ComesFrom::ground, Answer::no, Answer::no)).verdict,
              Verdict::meets);
    EXPECT_NE(std::string(separation_judged(piped(ComesFrom::house, Answer::no, Answer::no)).says)
                  .find("insulating section"),
              std::string::npos);
}

TEST(Separation, AnInsulatingSectionPartsThem) {
    EXPECT_EQ(separation_judged(piped(ComesFrom::house, Answer::yes, Answer::yes)).verdict,
              Verdict::meets);
    EXPECT_EQ(separation_judged(piped(ComesFrom::house, Answer::unknown, Answer::yes)).verdict,
              Verdict::fails);
}

TEST(Separation, OneEarthForBothNeedsNoDistance) {
    EXPECT_EQ(separation_judged(reaching(0), BuildingEarthing::supply_earth).verdict,
              Verdict::meets);
    EXPECT_EQ(separation_judged(reaching(0), BuildingEarthing::shared_electrode).verdict,
              Verdict::meets);
}

}  // namespace
}  // namespace toft::rules
