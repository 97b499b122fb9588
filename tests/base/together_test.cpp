#include "base/together.h"

#include <gtest/gtest.h>

namespace toft {
namespace {

using Lines = std::vector<std::string>;

TEST(Together, NamesThatAreOnlyNumberedOnAreToldByTheFirstAndTheLast) {
    EXPECT_EQ(names_together({}), "");
    EXPECT_EQ(names_together({"Gym"}), "Gym");
    EXPECT_EQ(names_together({"Gym", "Stable"}), "Gym and Stable");
    EXPECT_EQ(names_together({"Pillar 1", "Pillar 2"}), "Pillar 1 and Pillar 2");
    EXPECT_EQ(names_together({"Pillar 9", "Pillar 10", "Pillar 11"}), "Pillar 9 to 11");
    EXPECT_EQ(names_together({"Pillar 1", "Pillar 2", "Pillar 4"}),
              "Pillar 1, Pillar 2 and Pillar 4");
    EXPECT_EQ(names_together({"p1", "p2", "p3", "Hut", "p5"}), "p1 to 3, p5 and Hut");
    EXPECT_EQ(names_together({"N 2", "S 2", "Hut", "S 1", "N 4", "N 3", "S 3"}),
              "N 2 to 4, S 1 to 3 and Hut");
    EXPECT_EQ(names_together({"1", "2", "3"}), "1 to 3");
    EXPECT_EQ(names_together({"A 007", "A 008", "A 009"}), "A 007, A 008 and A 009");
}

TEST(Together, WhatGoesForAllIsSaidOfNoneAndTheRestByName) {
    Told told;
    told.add("test it", "Gym");
    told.add("label it", "Gym");
    told.add("test it", "Stable");
    told.add("test it", "Gym");
    EXPECT_EQ(told.lines(2), (Lines{"test it", "Gym: label it"}));
    EXPECT_EQ(told.lines(3), (Lines{"Gym and Stable: test it", "Gym: label it"}));
}

}  // namespace
}  // namespace toft
