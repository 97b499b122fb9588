#include "lever/words.h"

#include "lever/ideas.h"
#include "support/catalogue.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

std::string words_for(const site::Job& job, const Change& change) {
    return words_of(*tables::find_lever(support::catalogue().levers, change.key), job, change);
}

TEST(Words, OfSeveralRunsTheBuildingIsNamed) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.buildings[2].name = "Gym";
    for (const Change& change : all_changes_of(support::catalogue(), job)) {
        if (change.key != "duct" || change.runs.front() != 1) continue;
        EXPECT_EQ(words_for(job, change), "on the way to Gym: lay leg 1 in a duct");
    }
    Change rods{"more-rods", "Gym", job, false, 1, {1}};
    EXPECT_EQ(words_for(job, rods), "drive one more rod at Gym");
    rods.count = 2;
    rods.runs = {0, 1};
    EXPECT_EQ(words_for(job, rods), "drive one more rod each at b0 and Gym");
}

TEST(Words, OfManyPlacesAFewAreNamed) {
    const site::Job job = support::tree_job({support::the_house, 0, 0, 0, 0, 0});
    EXPECT_EQ(names_of(job, {1}), "b1");
    EXPECT_EQ(names_of(job, {0, 1, 2, 3}), "b0, b1, b2 and b3");
    EXPECT_EQ(names_of(job, {0, 1, 2, 3, 4}), "b0, b1, b2 and 2 more");
    EXPECT_EQ(names_of(job, {0, 1, 2, 3, 4, 5}), "each of the 6 buildings");
}

}  // namespace
}  // namespace toft::lever
