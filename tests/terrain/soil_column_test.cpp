#include "terrain/soil_column.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

const SoilColumn rod_column{10, 100, {0, 6, 20, 620}, 2.4};

TEST(SoilColumn, ShowsEachLayersResistivity) {
    const drawing::Items items = soil_column(looked_at_soil(), rod_column);
    EXPECT_TRUE(picture::says(items, "180 Ωm"));
    EXPECT_TRUE(picture::says(items, "55 Ωm"));
    EXPECT_EQ(picture::count_kind(items, "rod"), 1);
}

TEST(SoilColumn, AnUnknownSoilIsAQuestion) {
    SoilColumn bare = rod_column;
    bare.rod_m.reset();
    const drawing::Items items = soil_column({}, bare);
    EXPECT_TRUE(picture::says(items, "?"));
    EXPECT_EQ(picture::count_kind(items, "rod"), 0);
    parts::WordColumn words(0, 300, 0);
    soil_words({}, words);
    EXPECT_TRUE(picture::says(words.take(), "Its layers are not known."));
}

TEST(SoilColumn, SoilOfOneKindGoesAllTheWayDown) {
    answer::SoilAnswer soil;
    soil.strata = {{40, 69, 120, {}, {}, {}}};
    parts::WordColumn words(0, 400, 0);
    soil_words(soil, words);
    EXPECT_TRUE(picture::says(words.take(), "69 Ωm (40 to 120 Ωm), all the way down"));
    EXPECT_TRUE(layer_ends(soil).empty());
}

TEST(SoilColumn, LayersEndBelowOneAnother) {
    answer::SoilAnswer soil = looked_at_soil();
    EXPECT_EQ(layer_ends(soil), (std::vector<double>{0.9}));
    soil.strata.insert(soil.strata.begin(), {20, 30, 40, 0.2, 0.3, 0.5});
    EXPECT_EQ(layer_ends(soil), (std::vector<double>{0.3, 0.3 + 0.9}));
}

TEST(SoilColumn, ALayerTooThinForItsFigureIsNamedBelowTheDrawing) {
    answer::SoilAnswer soil = looked_at_soil();
    soil.strata.insert(soil.strata.begin(), {300, 400, 500, 0.02, 0.05, 0.08});
    EXPECT_FALSE(picture::says(soil_column(soil, rod_column), "400 Ωm"));
    parts::WordColumn words(0, 400, 0);
    soil_words(soil, words);
    const drawing::Items said = words.take();
    EXPECT_TRUE(picture::says(said, "400 Ωm (300 to 500 Ωm), 0.05 m thick"));
    EXPECT_TRUE(picture::says(said, "known by: readings"));
}

}  // namespace
}  // namespace toft::terrain
