#include "answer/unknowns.h"

#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

using support::between;
using support::effect_of;
using support::measured;
using support::question_of;

Answer designed(const site::Job& job) { return design(question_of(job)); }

/// A caravan on a combined supply: only a rod of its own can earth it.
site::Job caravan() {
    site::Job job = support::plain_job();
    job.buildings[1].use = site::Use::caravan_pitch;
    return job;
}

TEST(Unknowns, NothingOpenNothingAsked) {
    EXPECT_TRUE(designed(support::plain_job()).unknowns.empty());
}

TEST(Unknowns, ReachDecidesWhetherACaravanCanBeFed) {
    site::Job job = caravan();
    EXPECT_TRUE(designed(job).sound);
    job.buildings[1].reach_of_house_earth = {};
    const Answer a = designed(job);
    EXPECT_FALSE(a.sound);
    EXPECT_TRUE(only_conditional(a));
    EXPECT_EQ(effect_of(a, "/buildings/1/reach_of_house_earth_m"), "decides");
    for (const SchemeAnswer& s : a.schemes) {
        EXPECT_EQ(s.conditional_on,
                  (std::vector<std::string>{"/buildings/1/reach_of_house_earth_m"}));
    }
}

TEST(Unknowns, ALengthThatAsksForAThickerCableDecides) {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(30));
    job.runs[0].legs[0].length = between(metres(10), metres(90));
    const Answer a = designed(job);
    EXPECT_EQ(effect_of(a, "/runs/0/legs/0/length_m"), "decides");
    const UnknownAnswer& u = a.unknowns.front();
    EXPECT_GT(u.pieces.size(), 2u);
    EXPECT_TRUE(u.ask);
    ASSERT_TRUE(u.worth.has_value());
    EXPECT_LT(*u.worth, *u.saves);
    EXPECT_EQ(u.question, "How long is that leg?");
    EXPECT_NE(u.hangs.find("mm²"), std::string::npos);
}

TEST(Unknowns, ALengthThatIsOnlyBoughtChangesThePrice) {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(10));
    job.wishes.smallest_core = measured(square_millimetres(16));
    job.runs[0].legs[0].length = between(metres(20), metres(21));
    EXPECT_EQ(effect_of(designed(job), "/runs/0/legs/0/length_m"), "changes the price only");
}

TEST(Unknowns, AFactThatChangesNothingDoesNotMatter) {
    site::Job job = support::plain_job();
    job.intake.supply_neutral = {};  // 10 mm2 whatever it is, and nothing to bond
    const Answer a = designed(job);
    EXPECT_EQ(effect_of(a, "/intake/supply_neutral_mm2"), "does not matter");
    ASSERT_EQ(a.unknowns.size(), 1u);
    EXPECT_FALSE(a.unknowns.front().stated);
    EXPECT_EQ(a.unknowns.front().low, 16);
    EXPECT_EQ(a.unknowns.front().high, 35);
}

TEST(Unknowns, APipeNobodyLookedAtDecidesTheEarthing) {
    site::Job job = support::plain_job();
    site::Metalwork pipe;
    pipe.comes_from = site::ComesFrom::house;
    pipe.insulating_section = site::Answer::unknown;
    pipe.bonded_at_house = site::Answer::yes;
    job.buildings[1].metalwork = {pipe};
    EXPECT_EQ(effect_of(designed(job), "/buildings/1/metalwork/0/insulating_section"), "decides");
}

TEST(Unknowns, TheWeightiestComesFirstAndAStatedRangeIsTheSurveys) {
    site::Job job = caravan();
    job.intake.supply_neutral = {};
    job.buildings[1].reach_of_house_earth = between(metres(1), metres(4));
    const Answer a = designed(job);
    ASSERT_EQ(a.unknowns.size(), 2u);
    EXPECT_EQ(a.unknowns[0].fact, "/buildings/1/reach_of_house_earth_m");
    EXPECT_EQ(a.unknowns[0].effect, "decides");
    EXPECT_TRUE(a.unknowns[0].stated);
    EXPECT_EQ(a.unknowns[0].low, 1);
    EXPECT_EQ(a.unknowns[0].high, 4);
    EXPECT_EQ(a.unknowns[1].effect, "does not matter");
    EXPECT_TRUE(a.unknowns[0].ask);
    EXPECT_FALSE(a.unknowns[1].ask);
}

TEST(Unknowns, AskSaysTheSameWithoutTheDesign) {
    const site::Job job = support::example_job("three-phase-barn", support::catalogue());
    const Answer a = designed(job);
    const AskAnswer asked = ask(question_of(job));
    EXPECT_EQ(asked.sound, a.sound);
    EXPECT_EQ(asked.stands, a.schemes.front().words);
    EXPECT_NEAR(asked.total, a.schemes.front().price.total, 1e-9);
    ASSERT_EQ(asked.unknowns.size(), a.unknowns.size());
    for (std::size_t i = 0; i < a.unknowns.size(); ++i) {
        EXPECT_EQ(asked.unknowns[i].fact, a.unknowns[i].fact);
        EXPECT_EQ(asked.unknowns[i].hangs, a.unknowns[i].hangs);
    }
}

TEST(Unknowns, WhereNothingIsSoundTheFactsToHopeForAreAskedFirst) {
    site::Job job = caravan();
    job.intake.supply_neutral = {};
    job.buildings[1].reach_of_house_earth = {};
    const AskAnswer asked = ask(question_of(job));
    EXPECT_FALSE(asked.sound);
    EXPECT_TRUE(asked.conditional);
    EXPECT_EQ(asked.unknowns.front().fact, "/buildings/1/reach_of_house_earth_m");
    EXPECT_TRUE(asked.unknowns.front().ask);
    EXPECT_NE(asked.unknowns.front().hangs.find("nothing is sound"), std::string::npos);
}

}  // namespace
}  // namespace toft::answer
