#include "study/setting_parts.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using site::Answer;
using support::between;
using support::measured;

class OutBuilding : public ::testing::Test {
protected:
    BuildingSetting<Silent> of() {
        setting_ = support::prepared(job_);
        return setting_.building;
    }
    site::Building& shed() { return job_.buildings[1]; }
    bool is_open(const std::string& pointer) const {
        return std::any_of(setting_.open.begin(), setting_.open.end(),
                           [&](const OpenFact& fact) { return fact.pointer == pointer; });
    }

    site::Metalwork pipe(Answer insulated, Answer bonded) const {
        site::Metalwork m;
        m.what = site::Metal::water_pipe;
        m.material = "copper";
        m.insulating_section = insulated;
        m.bonded_at_house = bonded;
        return m;
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
};

TEST_F(OutBuilding, ATimberShedWithoutPipesBringsNothingIn) {
    EXPECT_TRUE(of().parts.empty());
    EXPECT_FALSE(of().extraneous);
    EXPECT_FALSE(of().bridged);
}

TEST_F(OutBuilding, APipeFromTheGroundIsExtraneous) {
    shed().metalwork = {pipe(Answer::no, Answer::no)};
    EXPECT_TRUE(of().extraneous);
    EXPECT_FALSE(of().bridged);
}

TEST_F(OutBuilding, APipeNobodyLookedAtIsTakenAsExtraneousAndBonded) {
    shed().metalwork = {pipe(Answer::unknown, Answer::unknown)};
    EXPECT_TRUE(of().extraneous);
    EXPECT_TRUE(of().bridged);
    EXPECT_TRUE(is_open("/buildings/1/metalwork/0/insulating_section"));
    EXPECT_TRUE(is_open("/buildings/1/metalwork/0/bonded_at_house"));
}

TEST_F(OutBuilding, AnInsulatingSectionKeepsThePotentialOut) {
    shed().metalwork = {pipe(Answer::yes, Answer::yes)};
    EXPECT_FALSE(of().extraneous);
    EXPECT_FALSE(of().bridged);
}

TEST_F(OutBuilding, APipeFromTheHouseBridgesTheTwoEarths) {
    shed().metalwork = {pipe(Answer::no, Answer::no)};
    shed().metalwork[0].comes_from = site::ComesFrom::house;
    EXPECT_TRUE(of().bridged);
}

TEST_F(OutBuilding, OnlyAMeasuredHighResistanceClearsAPipe) {
    shed().metalwork = {pipe(Answer::no, Answer::no)};
    shed().metalwork[0].resistance_to_met = measured(ohms(60000));
    EXPECT_FALSE(of().extraneous);
    shed().metalwork[0].resistance_to_met.standing = site::Standing::assumed;
    EXPECT_TRUE(of().extraneous);
    shed().metalwork[0].resistance_to_met = measured(ohms(8000));
    EXPECT_TRUE(of().extraneous);
}

TEST_F(OutBuilding, AMetalBuildingInTheGroundIsExtraneousItself) {
    shed().construction = site::Construction::steel_container;
    shed().stands_in_ground = Answer::yes;
    EXPECT_TRUE(of().extraneous);
    shed().stands_in_ground = Answer::no;
    EXPECT_FALSE(of().extraneous);
    shed().stands_in_ground = Answer::unknown;
    EXPECT_TRUE(of().extraneous);
    EXPECT_TRUE(is_open("/buildings/1/stands_in_ground"));
}

TEST_F(OutBuilding, WhereNobodyLookedMetalworkIsTakenToEnterAndToBridge) {
    shed().metalwork_surveyed = false;
    EXPECT_TRUE(of().extraneous);
    EXPECT_TRUE(of().bridged);
    EXPECT_TRUE(is_open("/buildings/1/metalwork"));
}

TEST_F(OutBuilding, ABuildingOfUnknownMakeIsTakenAsMetal) {
    shed().construction.reset();
    EXPECT_TRUE(of().extraneous);
    EXPECT_FALSE(of().bridged);
    EXPECT_TRUE(is_open("/buildings/1/construction"));
}

TEST_F(OutBuilding, AnUnmeasuredReachIsTakenAsTouching) {
    shed().reach_of_house_earth = {};
    EXPECT_EQ(of().reach_least, metres(0));
    EXPECT_TRUE(is_open("/buildings/1/reach_of_house_earth_m"));
    shed().reach_of_house_earth = between(metres(3), metres(6));
    EXPECT_EQ(of().reach_least, metres(3));
}

TEST_F(OutBuilding, AMeasuredElectrodeBeatsTheFormula) {
    shed().electrode.resistance = measured(ohms(85));
    EXPECT_EQ(of().ra_most, ohms(85));
}

TEST_F(OutBuilding, AnElectrodeInSoilThatNobodyNamedIsTakenInTheWorstSoil) {
    job_.ground.resistivity = {};
    job_.ground.soil = "";
    const Ohms unknown = of().ra_most;
    EXPECT_TRUE(is_open("/ground/resistivity_ohm_m"));
    for (const tables::Soil& soil : support::catalogue().soils) {
        job_.ground.soil = soil.word;
        EXPECT_GE(unknown, of().ra_most) << soil.word;
    }
}

TEST_F(OutBuilding, TwoRodsHaveLessThanOneAndMoreThanHalf) {
    const Ohms one = of().ra_most;
    shed().electrode.rods = measured(2.0);
    const Ohms two = of().ra_most;
    EXPECT_LT(two, one);
    EXPECT_GT(two, one * 0.5);
}

}  // namespace
}  // namespace toft::study
