#include "walk/wording.h"

#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

TEST(Wording, AFactSaysItsFigureAndHowItIsKnown) {
    EXPECT_EQ(fact_words(support::measured(ohms(0.21)), "Ω"), "0.21 Ω, measured");
    EXPECT_EQ(fact_words(support::between(metres(3), metres(8)), "m"), "3 to 8 m, assumed");
    EXPECT_EQ(fact_words(site::Fact<Ohms>{}, "Ω"), "not stated");
    EXPECT_EQ(fact_words(support::measured(3.0), ""), "3, measured");
}

TEST(Wording, WhatNobodySaidIsSaidToBeSo) {
    EXPECT_EQ(answer_words("wet floor", site::Answer::yes), "wet floor: yes");
    EXPECT_EQ(answer_words("wet floor", site::Answer::no), "wet floor: no");
    EXPECT_EQ(answer_words("wet floor", site::Answer::unknown), "wet floor: not stated");
    site::Building b;
    EXPECT_EQ(use_words(b), "use: not stated");
    b.use = site::Use::greenhouse;
    EXPECT_EQ(use_words(b), "use: greenhouse");
}

TEST(Wording, LargeResistancesAreInKiloohms) {
    EXPECT_EQ(ohms_words(ohms(22000)), "22 kΩ");
    EXPECT_EQ(ohms_words(ohms(41.2)), "41.2 Ω");
}

}  // namespace
}  // namespace toft::walk
