#include "soil/soil_words.h"

#include <gtest/gtest.h>

namespace toft::soil {
namespace {

bool says(const SoilFit& fit, const char* words) {
    return words_of(fit, 7).find(words) != std::string::npos;
}

SoilFit two_layers() {
    SoilFit fit;
    fit.verdict = Verdict::two_layers;
    fit.best = {{{ohm_metres(372.4), metres(2.7)}}, ohm_metres(145.5)};
    fit.resistivities = {{ohm_metres(294), ohm_metres(532)}, {ohm_metres(119), ohm_metres(167)}};
    fit.thicknesses = {{metres(1.67), metres(4.34)}};
    fit.misfit = 0.036;
    fit.reach = metres(16.2);
    return fit;
}

TEST(SoilWords, SayEveryLayerWithItsRange) {
    EXPECT_TRUE(says(two_layers(),
                     "Two layers: 2.7 m (1.67 to 4.34) of 372 Ω·m (294 to 532), "
                     "then 146 Ω·m (119 to 167), met to 3.6 %."));
    EXPECT_TRUE(says(two_layers(), "deeper than 16.2 m"));
    EXPECT_FALSE(says(two_layers(), "open end"));
    EXPECT_FALSE(says(two_layers(), "misfit is large"));
    EXPECT_FALSE(says(two_layers(), "stands apart"));
}

TEST(SoilWords, SayWhatIsOpen) {
    SoilFit fit = two_layers();
    fit.resistivities[1].open_high = true;
    EXPECT_TRUE(says(fit, "at least 119"));
    EXPECT_TRUE(says(fit, "open end"));
    fit.resistivities[1].open_low = true;
    EXPECT_TRUE(says(fit, "146 Ω·m (anything)"));
    fit.thicknesses[0].open_low = true;
    EXPECT_TRUE(says(fit, "at most 4.34"));
}

TEST(SoilWords, WarnOfALargeMisfitAndOfAnOddReading) {
    SoilFit fit = two_layers();
    fit.misfit = 0.2;
    fit.odd = OddReading{4, 0.00001};
    EXPECT_TRUE(says(fit, "misfit is large"));
    EXPECT_TRUE(says(fit,
                     "Reading 5 stands apart from the others: without it they are met within "
                     "0.1 %"));
}

TEST(SoilWords, SayThatNothingWasIdentified) {
    SoilFit fit;
    fit.best.deepest = ohm_metres(100);
    fit.resistivities = {{ohm_metres(33.3), ohm_metres(300)}};
    EXPECT_NE(words_of(fit, 1).find("Not identifiable: 1 reading cannot"), std::string::npos);
    EXPECT_NE(words_of(fit, 2).find("2 readings cannot"), std::string::npos);
    EXPECT_TRUE(says(fit, "33.3 to 300"));
}

}  // namespace
}  // namespace toft::soil
