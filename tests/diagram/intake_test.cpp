#include "diagram/intake.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

drawing::Items intake_of(const site::Job& job) {
    return drawn([&](Ladder& ladder) { draw_intake(picture::set_stage(job, nullptr), ladder); });
}

TEST(Intake, EverySupplyHasFuseMeterAndMainEarthingTerminal) {
    for (const std::string& name : all_examples()) {
        const drawing::Items items = intake_of(example(name).job);
        for (const char* kind :
             {"supply", "fuse", "energy-meter", "main-earthing-terminal", "protective-earth"}) {
            EXPECT_EQ(count_kind(items, kind), 1) << name << " " << kind;
        }
    }
}

TEST(Intake, OnlyACombinedSupplyHasThePenAndItsLinkInTheCutOut) {
    for (const char* name : {"demo", "tn-s-workshop", "tt-shed"}) {
        const bool combined = std::string(name) == "demo";
        const drawing::Items items = intake_of(example(name).job);
        EXPECT_EQ(count_kind(items, "stroke-pen"), combined ? 1 : 0) << name;
        EXPECT_EQ(count_kind(items, "pen-link"), combined ? 1 : 0) << name;
        EXPECT_EQ(count_kind(items, "stroke-neutral"), combined ? 0 : 1) << name;
        EXPECT_EQ(says(items, "neutral and earth are joined here"), combined) << name;
    }
}

TEST(Intake, ASeparateEarthComesWithTheSupply) {
    const drawing::Items items = intake_of(example("tn-s-workshop").job);
    EXPECT_EQ(count_kind(items, "stroke-protective"), 1);
    EXPECT_TRUE(says(items, "earth separate from the neutral"));
}

TEST(Intake, OnlyAHouseWithoutTheOperatorsEarthHasARod) {
    EXPECT_EQ(count_kind(intake_of(example("tt-shed").job), "electrode"), 1);
    EXPECT_TRUE(says(intake_of(example("tt-shed").job), "74 Ω"));
    EXPECT_EQ(count_kind(intake_of(example("demo").job), "electrode"), 0);
    EXPECT_EQ(count_kind(intake_of(example("tn-s-workshop").job), "electrode"), 0);
}

TEST(Intake, ThreePhasesAreTwoMoreStrokes) {
    site::Job job = example("tn-s-workshop").job;
    EXPECT_EQ(count_kind(intake_of(job), "stroke-line"), 1);
    job.intake.phases = 3;
    EXPECT_EQ(count_kind(intake_of(job), "stroke-line"), 3);
    EXPECT_TRUE(says(intake_of(job), "three-phase 230/400 V"));
}

TEST(Intake, SaysWhatIsNotKnown) {
    const drawing::Items items = intake_of(example("three-facts").job);
    for (const char* words : {"rating not known", "tails: size not known",
                              "whether looped with a neighbour's supply"}) {
        EXPECT_TRUE(says(items, words)) << words;
    }
}

TEST(Intake, ABondThatWasNotFoundIsNotDrawn) {
    site::Job job = example("demo").job;
    EXPECT_EQ(count_kind(intake_of(job), "bonded-metal"), 1);
    job.intake.main_bonding.low = job.intake.main_bonding.high = square_millimetres(0);
    EXPECT_EQ(count_kind(intake_of(job), "bonded-metal"), 0);
    EXPECT_TRUE(says(intake_of(job), "none found at the house"));
}

TEST(Intake, ABondThatNobodyLookedForIsNotDrawnAsAConductor) {
    site::Job job = example("demo").job;
    const int seen = count_kind(intake_of(job), "protective");
    job.intake.main_bonding = {};
    EXPECT_EQ(count_kind(intake_of(job), "protective"), seen - 1);
    EXPECT_TRUE(says(intake_of(job), "whether it is there, and its size: look"));
}

}  // namespace
}  // namespace toft::diagram
