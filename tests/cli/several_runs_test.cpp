// Jobs of several runs at the command line: --run says which, and what is worked out for one run
// only says so.

#include "cli/program.h"

#include <gtest/gtest.h>

namespace toft::cli {
namespace {

class SeveralRuns : public ::testing::Test {
protected:
    Ran run(std::vector<std::string> arguments) const { return program_.run(arguments); }

    Program program_;
    std::string job_ = example("garage-gym-stable");
};

TEST_F(SeveralRuns, AFigureOfARunBehindCountsWhatTheRunsBeforeHaveLost) {
    const Ran gym = run({"explain", job_, "voltage-drop", "--run", "gym-feed"});
    ASSERT_EQ(gym.code, 0) << gym.error;
    EXPECT_NE(gym.out.find("drop.before"), std::string::npos);
    EXPECT_NE(gym.out.find("left by the runs before"), std::string::npos);
    const Ran garage = run({"explain", job_, "voltage-drop", "--run", "garage-feed"});
    ASSERT_EQ(garage.code, 0);
    EXPECT_EQ(garage.out.find("left by the runs before"), std::string::npos);
}

TEST_F(SeveralRuns, ARunThatIsNotThereIsMetWithTheNearestName) {
    const Ran none = run({"explain", job_, "--run", "gym-fed"});
    EXPECT_EQ(none.code, 2);
    EXPECT_NE(none.error.find("gym-feed"), std::string::npos) << none.error;
}

TEST_F(SeveralRuns, WhatIsWorkedOutForOneRunRefusesSeveral) {
    for (const char* command : {"dark", "ground"}) {
        const Ran refused = run({command, job_});
        EXPECT_EQ(refused.code, 2) << command;
        EXPECT_EQ(refused.out, "") << command;
    }
}

TEST_F(SeveralRuns, OpenFactsAndLeversAreThoseOfTheWhole) {
    const Ran asked = run({"ask", job_});
    EXPECT_EQ(asked.code, 0) << asked.error;
    EXPECT_NE(asked.out.find("3 runs: Garage: "), std::string::npos);
    EXPECT_NE(asked.out.find("Garage and Gym: distance from the electrode"), std::string::npos);
    EXPECT_EQ(asked.error, "") << "a progress line is for terminals";
    const Ran levers = run({"levers", job_});
    EXPECT_EQ(levers.code, 0) << levers.error;
    EXPECT_NE(levers.out.find("straight way to Garage, Gym and Stable"), std::string::npos);
    EXPECT_NE(levers.out.find("made alone: Garage £"), std::string::npos);
    EXPECT_NE(levers.out.find("on the way to Garage: dig leg 2 through lawn"), std::string::npos);
}

TEST_F(SeveralRuns, HowABuildingIsEarthedIsArguedFromWhatArrivesThere) {
    const Ran all = run({"why", job_});
    ASSERT_EQ(all.code, 0) << all.error;
    for (const char* name : {"Garage", "Gym", "Stable"}) {
        EXPECT_NE(all.out.find(name), std::string::npos) << name;
    }
    const Ran gym = run({"why", job_, "--run", "gym-feed"});
    ASSERT_EQ(gym.code, 0) << gym.error;
    EXPECT_NE(gym.out.find("HOW IS Gym TO BE EARTHED"), std::string::npos);
    EXPECT_EQ(gym.out.find("Stable"), std::string::npos);
    EXPECT_EQ(run({"why", job_, "--run", "gym-fed"}).code, 2);
}

TEST_F(SeveralRuns, HowFarACableReachesBehindARunCountsWhatTheRunHasLost) {
    const Ran house = run({"tables", job_, "--standard", "BS EN 60898"});
    ASSERT_EQ(house.code, 0) << house.error;
    EXPECT_NE(house.out.find("Run garage-feed"), std::string::npos);
    const Ran gym = run({"tables", job_, "--run", "gym-feed"});
    ASSERT_EQ(gym.code, 0) << gym.error;
    EXPECT_NE(gym.out.find("Run gym-feed"), std::string::npos);
    EXPECT_NE(gym.out.find("they lose more where this run carries more"), std::string::npos);
    EXPECT_EQ(run({"tables", job_, "--run", "none"}).code, 2);
}

TEST_F(SeveralRuns, NoPictureShowsARunFromABuildingAsOneFromTheHouse) {
    EXPECT_EQ(run({"draw", job_, "--run", "gym-feed"}).code, 2);
    EXPECT_EQ(run({"draw", job_, "--run", "garage-feed"}).code, 0);
}

}  // namespace
}  // namespace toft::cli
