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
    for (const char* command : {"ask", "levers", "later", "dark", "tables", "why", "ground"}) {
        const Ran refused = run({command, job_});
        EXPECT_EQ(refused.code, 2) << command;
        EXPECT_EQ(refused.out, "") << command;
    }
}

TEST_F(SeveralRuns, NoPictureShowsARunFromABuildingAsOneFromTheHouse) {
    EXPECT_EQ(run({"draw", job_, "--run", "gym-feed"}).code, 2);
    EXPECT_EQ(run({"draw", job_, "--run", "garage-feed"}).code, 0);
}

}  // namespace
}  // namespace toft::cli
