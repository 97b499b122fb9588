// How an outbuilding should be earthed, as the trade argues it.

#include "answer/why.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::trade {
namespace {

using site::Answer;
using site::Earthing;
using support::measured;
using walk::Choice;
using walk::Standing;

Standing standing(const site::Job& job, Choice choice) {
    const auto walks = answer::walks_of(support::catalogue(), job);
    for (const walk::Way& way : walks.at(0).ways) {
        if (way.choice == choice) return way.standing;
    }
    ADD_FAILURE() << "the supply does not offer that";
    return Standing::ruled_out;
}

/// A garden office of timber, nothing metal in it, and an electrode that was tested.
site::Job office() {
    site::Job job = support::plain_job();
    job.buildings[1].use = site::Use::office;
    job.buildings[1].electrode.resistance = measured(ohms(41));
    return job;
}

site::Job with_pipe(Answer bonded, Answer section) {
    site::Job job = office();
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.bonded_at_house = bonded;
    pipe.insulating_section = section;
    job.buildings[1].metalwork = {pipe};
    return job;
}

TEST(EarthingWalk, ATimberOfficeWithNothingMetalMayBeEarthedEitherWay) {
    for (const Earthing system : {Earthing::tn_c_s, Earthing::tn_s}) {
        site::Job job = office();
        job.intake.earthing = system;
        EXPECT_EQ(standing(job, Choice::supply_earth), Standing::open);
        EXPECT_EQ(standing(job, Choice::own_electrode), Standing::open);
    }
}

TEST(EarthingWalk, ACaravanOnACombinedSupplyMayNotTakeTheSuppliesEarth) {
    site::Job job = office();
    job.buildings[1].use = site::Use::caravan_pitch;
    EXPECT_EQ(standing(job, Choice::supply_earth), Standing::ruled_out);
    EXPECT_EQ(standing(job, Choice::added_electrode), Standing::ruled_out);
    EXPECT_EQ(standing(job, Choice::own_electrode), Standing::required);
}

TEST(EarthingWalk, APipeBondedAtTheHouseRulesAnOwnElectrodeOutUntilAPlasticSectionIsFitted) {
    EXPECT_EQ(standing(with_pipe(Answer::yes, Answer::no), Choice::own_electrode),
              Standing::ruled_out);
    EXPECT_EQ(standing(with_pipe(Answer::yes, Answer::yes), Choice::own_electrode), Standing::open);
    EXPECT_EQ(standing(with_pipe(Answer::yes, Answer::no), Choice::supply_earth), Standing::open);
}

TEST(EarthingWalk, ATestDoesNotPartTwoEarthsThatAPipeJoins) {
    site::Job job = with_pipe(Answer::yes, Answer::no);
    job.buildings[1].metalwork[0].resistance_to_met = measured(ohms(30000));
    EXPECT_EQ(standing(job, Choice::own_electrode), Standing::ruled_out);
}

TEST(EarthingWalk, RockLeavesTheSuppliesEarth) {
    site::Job job = office();
    job.buildings[1].electrode = {};
    job.ground.soil = "rock";
    job.ground.resistivity = {};
    EXPECT_EQ(standing(job, Choice::supply_earth), Standing::open);
    EXPECT_GE(standing(job, Choice::own_electrode), Standing::judgement);
}

TEST(EarthingWalk, AStableWithTheHousesTapAtItsDoorIsAMatterOfJudgement) {
    site::Job job = office();
    job.buildings[1].use = site::Use::stable;
    EXPECT_EQ(standing(job, Choice::supply_earth), Standing::judgement);
    EXPECT_EQ(standing(job, Choice::own_electrode), Standing::open);
    job.buildings[1].reach_of_house_earth = measured(metres(1));
    EXPECT_EQ(standing(job, Choice::own_electrode), Standing::ruled_out);
}

TEST(EarthingWalk, OnATtSupplyABuildingMayShareTheHousesElectrodeOrHaveItsOwn) {
    site::Job job = office();
    job.intake.earthing = Earthing::tt;
    job.intake.electrode = measured(ohms(67));
    EXPECT_EQ(standing(job, Choice::shared_electrode), Standing::open);
    EXPECT_EQ(standing(job, Choice::own_electrode), Standing::open);
}

TEST(EarthingWalk, TheAnswerHoldsTheWalkAndNamesWhatItRestsOn) {
    const site::Job job = office();
    const answer::Answer a = answer::design(support::question_of(job));
    ASSERT_EQ(a.walks.size(), 1u);
    bool law = false;
    for (const answer::SourceAnswer& s : a.sources) law = law || s.key == "forum-23873";
    EXPECT_TRUE(law);
}

}  // namespace
}  // namespace toft::trade
