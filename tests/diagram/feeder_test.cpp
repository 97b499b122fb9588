// A run that is fed from another building than the house.

#include "diagram/feeder.h"

#include "base/text.h"
#include "diagram/sheet.h"
#include "diagram/single_line.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

struct Tree {
    site::Job job = support::example_job("garage-gym-stable", support::catalogue());
    answer::Answer answer = answer::design(support::question_of(job));

    Scene diagram(const std::string& run, double width = paper_wide) const {
        return single_line(answer::seen_from(job, run), answer::for_run(answer, run), 0, width);
    }
};

const Tree& tree() {
    static const Tree made;
    return made;
}

TEST(Feeder, ARunFromABuildingBeginsAtThatBoardAndNeverAtTheHouse) {
    const Scene scene = tree().diagram("gym-feed");
    for (const char* words : {"from the run that feeds Garage", "earth terminal of Garage",
                              "the board of Garage: main switch", "at Garage"}) {
        EXPECT_TRUE(picture::says(scene.items, words)) << words;
    }
    for (const char* words :
         {"the house's board", "the house's ways", "cut-out", "energy meter", "supply TN"}) {
        EXPECT_FALSE(picture::says(scene.items, words)) << words;
    }
}

TEST(Feeder, WhatArrivesIsWhatTheRunBeforeLeaves) {
    const answer::SchemeAnswer& first = tree().answer.schemes.front();
    const answer::SchemeAnswer* gym = answer::part_of(first, "gym-feed");
    ASSERT_TRUE(gym && gym->incoming);
    EXPECT_NEAR(gym->incoming->ze_working.number(), first.run.figures.loop_impedance_far_ohm, 1e-9);
    EXPECT_TRUE(picture::says(tree().diagram("gym-feed").items,
                              significant(first.run.figures.loop_impedance_far_ohm, 4) + " Ω"));
}

TEST(Feeder, ARunFromTheHouseStillBeginsAtTheSupply) {
    const Scene scene = tree().diagram("garage-feed");
    EXPECT_TRUE(picture::says(scene.items, "energy meter"));
    EXPECT_FALSE(picture::says(scene.items, "from the run that feeds"));
}

TEST(Feeder, NoWordsCoverOthersAtAnyWidth) {
    for (const char* run : {"gym-feed", "stable-feed"}) {
        for (const double width : {320.0, 360.0, paper_wide, 1100.0}) {
            const Scene scene = tree().diagram(run, width);
            EXPECT_EQ(picture::clashes(scene.items, {0, 0, scene.width, scene.height}), "")
                << run << " " << width;
        }
    }
}

}  // namespace
}  // namespace toft::diagram
