#include "picture/house.h"

#include "parts/device_words.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {

using namespace parts;
namespace {

Sketch house_of(const Example& one, const answer::SchemeAnswer* scheme) {
    Sketch sketch;
    const Stage stage = set_stage(one.job, scheme);
    draw_house(stage, sketch);
    draw_head_rcd(stage, sketch);
    for (const drawing::Callout& callout : sketch.callouts) {
        for (const drawing::Spans& line : callout.lines) {
            sketch.put(drawing::Text{{}, line, {}});
        }
    }
    return sketch;
}

TEST(House, NamesTheSupplyEarthing) {
    EXPECT_TRUE(says(house_of(example("demo"), nullptr).items, "supply TN-C-S"));
    EXPECT_TRUE(says(house_of(example("tn-s-workshop"), nullptr).items, "supply TN-S"));
    const Sketch tt = house_of(example("tt-shed"), nullptr);
    EXPECT_TRUE(says(tt.items, "supply TT"));
    EXPECT_TRUE(says(tt.items, "74 Ω"));
}

TEST(House, HasARodOnlyWhereTheSupplyGivesNoEarth) {
    EXPECT_EQ(count_kind(house_of(example("tt-shed"), nullptr).items, "house-rod"), 1);
    EXPECT_EQ(count_kind(house_of(example("demo"), nullptr).items, "house-rod"), 0);
    EXPECT_EQ(count_kind(house_of(example("tn-s-workshop"), nullptr).items, "house-rod"), 0);
}

TEST(House, NamesTheDeviceAndWhereItIsFedFrom) {
    const Example& one = example("demo");
    int tails = 0;
    int ways = 0;
    for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
        const Sketch sketch = house_of(one, &scheme);
        const bool on_tails = scheme.run.fed_from != "spare way";
        (on_tails ? tails : ways) += 1;
        EXPECT_EQ(says(sketch.items, "new switch-fuse on the tails"),
                  scheme.run.fed_from == "tails" && scheme.run.device.curve.empty());
        EXPECT_EQ(count_kind(sketch.items, "board"), on_tails ? 2 : 1);
        EXPECT_TRUE(says(sketch.items, device_words(scheme.run.device)));
        EXPECT_EQ(count_kind(sketch.items, "head-rcd"),
                  scheme.run.rcd && scheme.run.device.kind != "RCBO" ? 1 : 0);
    }
    EXPECT_GT(tails, 0);
    EXPECT_GT(ways, 0);
}

TEST(House, WithoutASchemeNamesNoDevice) {
    const Sketch sketch = house_of(example("demo"), nullptr);
    EXPECT_FALSE(says(sketch.items, "breaker"));
    EXPECT_EQ(count_kind(sketch.items, "head-rcd"), 0);
}

TEST(House, SaysWhatIsNotKnown) {
    EXPECT_TRUE(says(house_of(example("three-facts"), nullptr).items, "rating not known"));
}

TEST(House, ARunOnThreePhasesTakesThreePolesAndFourTails) {
    const Example& three = example("three-phase-barn");
    const Sketch sketch = house_of(three, &three.answer.schemes[0]);
    EXPECT_TRUE(says(sketch.items, "supply TN-C-S, three-phase"));
    EXPECT_TRUE(says(sketch.items, "three-pole"));
    EXPECT_EQ(find_kind(sketch.items, "tails")->items.size(), 4u);
    EXPECT_EQ(find_kind(house_of(example("demo"), nullptr).items, "tails")->items.size(), 2u);
}

TEST(House, AnRcboNeedsNoRcdBesideIt) {
    const Example& one = example("hidden-flat-cable");
    const answer::SchemeAnswer& scheme = one.answer.schemes[0];
    ASSERT_TRUE(scheme.run.rcd.has_value());
    const Sketch sketch = house_of(one, &scheme);
    EXPECT_EQ(count_kind(sketch.items, "head-rcd"), 0);
    EXPECT_TRUE(says(sketch.items, "opens on 30 mA to earth too"));
}

}  // namespace
}  // namespace toft::picture
