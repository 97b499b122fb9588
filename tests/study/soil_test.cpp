#include "study/soil.h"

#include "study/ground_memo.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::between;
using support::measured;

struct Settled {
    SoilSetting soil;
    std::vector<OpenFact> open;
};

Settled settled(const site::Ground& ground, End end = End::worse) {
    Settled out;
    Corner corner;
    corner.all = end;
    GroundMemo memo;
    Settler settler(support::catalogue(), corner, out.open, memo);
    out.soil = settle_soil(settler, support::catalogue(), ground);
    return out;
}

bool asks(const Settled& s, const std::string& pointer) {
    for (const OpenFact& fact : s.open) {
        if (fact.pointer == pointer) return true;
    }
    return false;
}

/// Readings that uniform or two-layer soil would give, by the published series.
site::Ground pins_over(double upper, double lower, double thickness) {
    site::Ground ground;
    for (const double a : {0.5, 1.0, 2.0, 4.0, 8.0, 16.0}) {
        const double k = (lower - upper) / (lower + upper);
        double sum = 1;
        for (int n = 1; n < 4000; ++n) {
            const double d = 2 * n * thickness / a;
            sum += 4 * std::pow(k, n) * (1 / std::sqrt(1 + d * d) - 1 / std::sqrt(4 + d * d));
        }
        site::PinReading pin;
        pin.spacing = metres(a);
        pin.resistance = ohms(upper * sum / (2 * 3.14159265358979 * a));
        ground.pins.push_back(pin);
    }
    return ground;
}

TEST(SoilOfAJob, NothingKnownIsEverySoilThereIs) {
    const Settled s = settled({});
    EXPECT_EQ(s.soil.known, SoilKnown::nothing);
    EXPECT_TRUE(s.soil.whole_year);
    for (const tables::Soil& row : support::catalogue().soils) {
        EXPECT_LE(smallest_in(s.soil), row.low.value) << row.word;
        EXPECT_GE(largest_in(s.soil), row.high.value) << row.word;
    }
    EXPECT_TRUE(asks(s, "/ground/resistivity_ohm_m"));
    EXPECT_FALSE(asks(s, "/ground/read_when"));
}

TEST(SoilOfAJob, AnAssumedRangeStandsForTheWholeYear) {
    site::Ground ground;
    ground.resistivity = between(ohm_metres(40), ohm_metres(150));
    const Settled s = settled(ground);
    EXPECT_TRUE(s.soil.whole_year);
    EXPECT_EQ(largest_in(s.soil), ohm_metres(150));
    EXPECT_EQ(smallest_in(s.soil), ohm_metres(40));
    EXPECT_EQ(largest_in(settled(ground, End::low).soil), ohm_metres(40));
}

TEST(SoilOfAJob, AMeasuredSoilIsAskedWhenItWasRead) {
    site::Ground ground;
    ground.resistivity = measured(ohm_metres(80));
    const Settled unknown = settled(ground);
    EXPECT_FALSE(unknown.soil.whole_year);
    EXPECT_FALSE(unknown.soil.read_dry) << "wet is the worse answer: it will dry";
    EXPECT_TRUE(asks(unknown, "/ground/read_when"));
    ground.read_when = site::Season::dry;
    const Settled dry = settled(ground);
    EXPECT_TRUE(dry.soil.read_dry);
    EXPECT_FALSE(asks(dry, "/ground/read_when"));
}

TEST(SoilOfAJob, LayersKeepTheirOrder) {
    site::Ground ground;
    ground.layers = {{between(ohm_metres(50), ohm_metres(90)), metres(1.5)},
                     {measured(ohm_metres(400)), std::nullopt}};
    const SoilSetting soil = settled(ground).soil;
    EXPECT_EQ(soil.known, SoilKnown::layers);
    ASSERT_EQ(soil.worst.size(), 1u);
    EXPECT_EQ(soil.worst[0].layers.at(0).resistivity, ohm_metres(90));
    EXPECT_EQ(soil.best[0].layers.at(0).resistivity, ohm_metres(50));
    EXPECT_EQ(soil.worst[0].layers.at(0).thickness, metres(1.5));
    EXPECT_EQ(soil.worst[0].deepest, ohm_metres(400));
}

TEST(SoilOfAJob, PinsFindTheLayersTheyWereReadOver) {
    const SoilSetting soil = settled(pins_over(60, 300, 1.8)).soil;
    EXPECT_EQ(soil.known, SoilKnown::readings);
    ASSERT_FALSE(soil.worst.empty());
    const field::Strata& best = soil.worst.front();
    ASSERT_EQ(best.layers.size(), 1u);
    EXPECT_NEAR(best.layers[0].resistivity.number(), 60, 1.5);
    EXPECT_NEAR(best.layers[0].thickness.number(), 1.8, 0.1);
    EXPECT_NEAR(best.deepest.number(), 300, 15);
}

TEST(SoilOfAJob, PinsBeatTheKindOfSoil) {
    site::Ground ground = pins_over(75, 75, 1);
    ground.soil = "rock";
    const SoilSetting soil = settled(ground).soil;
    EXPECT_EQ(soil.known, SoilKnown::readings);
    EXPECT_LT(largest_in(soil), ohm_metres(100));
}

TEST(SoilOfAJob, ARodNarrowsWhatAWordLeavesOpen) {
    site::Ground ground;
    ground.soil = "clay";
    ground.rods = {{metres(1.2), millimetres(16), ohms(35.8)}};  // 50 ohm metres by BS 7430
    const SoilSetting soil = settled(ground).soil;
    EXPECT_EQ(soil.known, SoilKnown::rods);
    EXPECT_LT(largest_in(soil), ohm_metres(65));
    EXPECT_GT(largest_in(soil), ohm_metres(50));
    EXPECT_GT(smallest_in(soil), ohm_metres(40));
}

TEST(SoilOfAJob, ReadingsAreFittedOnce) {
    const site::Ground ground = pins_over(60, 300, 1.8);
    GroundMemo memo;
    std::vector<OpenFact> open;
    const Corner corner;
    Settler settler(support::catalogue(), corner, open, memo);
    settle_soil(settler, support::catalogue(), ground);
    ASSERT_TRUE(memo.read);
    memo.read->soils = {even_soil(ohm_metres(7))};
    EXPECT_EQ(largest_in(settle_soil(settler, support::catalogue(), ground)), ohm_metres(7));
}

TEST(SoilOfAJob, EveryWayOfKnowingHasItsWords) {
    EXPECT_STREQ(soil_word(SoilKnown::readings), "readings");
    EXPECT_STREQ(soil_word(SoilKnown::rods), "driven rods");
    EXPECT_STREQ(soil_word(SoilKnown::layers), "stated layers");
    EXPECT_STREQ(soil_word(SoilKnown::resistivity), "stated resistivity");
    EXPECT_STREQ(soil_word(SoilKnown::kind), "kind of soil");
    EXPECT_STREQ(soil_word(SoilKnown::nothing), "nothing");
}

}  // namespace
}  // namespace toft::study
