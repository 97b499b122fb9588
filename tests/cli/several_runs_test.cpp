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
    for (const char* command : {"later", "dark", "ground"}) {
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
    const Ran gym = run({"draw", job_, "--run", "gym-feed", "--picture", "conductors"});
    EXPECT_EQ(gym.code, 0) << gym.error;
    EXPECT_NE(gym.out.find("the board of Garage"), std::string::npos);
    EXPECT_EQ(gym.out.find("near end: the house"), std::string::npos);
    EXPECT_EQ(run({"draw", job_, "--run", "garage-feed"}).code, 0);
}

TEST_F(SeveralRuns, LeftOutTheRunIsTheFirstFromTheHouse) {
    const Ran named = run({"explain", job_, "voltage-drop", "--run", "garage-feed"});
    EXPECT_EQ(run({"explain", job_, "voltage-drop"}).out, named.out);
    EXPECT_NE(run({"explain", job_, "voltage-drop", "--run", "gym-feed"}).out, named.out);
    EXPECT_EQ(run({"draw", job_}).out, run({"draw", job_, "--run", "garage-feed"}).out);
    EXPECT_EQ(run({"draw", job_, "--run", "garage-fed"}).code, 2);
}

TEST_F(SeveralRuns, OfAJobOfOneRunItMayBeNamedToo) {
    const Ran named = run({"explain", example("demo"), "voltage-drop", "--run", "studio-feed"});
    const Ran unnamed = run({"explain", example("demo"), "voltage-drop"});
    EXPECT_EQ(unnamed.code, 0);
    EXPECT_EQ(named.code, 0) << named.error;
    EXPECT_EQ(named.out, unnamed.out);
}

TEST_F(SeveralRuns, WhatToDoIsAListThatTellsThoseFedAlikeOnce) {
    const Ran garage = run({"design", job_});
    for (const char* part : {"\n  - Garage: Feed it", "\n  - Gym: Feed it", "\n  - Stable: Feed it",
                             "RUN gym-feed FROM Garage TO Gym", "  - Stable: animals feel"}) {
        EXPECT_NE(garage.out.find(part), std::string::npos) << part;
    }
    const Ran field = run({"design", example("lapwing-field")});
    const std::string todo = field.out.substr(0, field.out.find("HOW CLOSE"));
    EXPECT_NE(todo.find(", each: Feed it"), std::string::npos) << todo;
    std::size_t items = 0;
    for (std::size_t at = 0; (at = todo.find("\n  - ", at)) != std::string::npos; ++at) ++items;
    EXPECT_LT(items, 10u) << "ten pillars, but fewer ways to feed one\n" << todo;
}

TEST_F(SeveralRuns, WhereSeveralLeadToOneBuildingOnlyTheOneBuiltIsExplainedAndDrawn) {
    const std::string job = example("tansy-bank");
    const Ran design = run({"design", job});
    ASSERT_EQ(design.code, 0) << design.error;
    EXPECT_NE(design.out.find("WHICH FEEDS WHICH"), std::string::npos);
    EXPECT_NE(design.out.find("not built: "), std::string::npos);
    EXPECT_EQ(run({"explain", job, "voltage-drop", "--run", "packing-feed"}).code, 0);
    const Ran left_out = run({"explain", job, "voltage-drop", "--run", "glass-from-house"});
    EXPECT_EQ(left_out.code, 2);
    EXPECT_NE(left_out.error.find("not built"), std::string::npos) << left_out.error;
    EXPECT_EQ(run({"draw", job, "--run", "packing-feed"}).code, 0);
    EXPECT_EQ(run({"draw", job, "--run", "glass-from-house"}).code, 2);
}

}  // namespace
}  // namespace toft::cli
