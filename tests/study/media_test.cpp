#include "study/media.h"

#include "study/electrode.h"
#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

field::Strata clay_under_loam(double loam_m) {
    return {{{ohm_metres(80), metres(0.5)}, {ohm_metres(120), metres(loam_m)}}, ohm_metres(30)};
}

TEST(Media, MakeEachSoilReadyOnce) {
    Media media;
    const field::Medium* first = media.in(clay_under_loam(1));
    ASSERT_TRUE(first);
    const field::Medium* other = media.in(clay_under_loam(2));
    EXPECT_NE(other, first);
    EXPECT_EQ(media.in(clay_under_loam(1)), first);
    EXPECT_EQ(media.count(), 2u);
    for (int i = 0; i < 50; ++i) media.in(clay_under_loam(3 + i));
    EXPECT_EQ(media.in(clay_under_loam(1)), first) << "what was given stays where it is";
}

TEST(Media, HaveNoSoilThatNoFieldCanBeSolvedIn) {
    Media media;
    EXPECT_FALSE(media.in(even_soil(ohm_metres(0))));
    EXPECT_FALSE(media.in({{{ohm_metres(1), metres(1)}}, ohm_metres(1e6)}));
    EXPECT_EQ(media.count(), 0u);
}

TEST(Media, ChangeNoElectrodesYear) {
    Media media;
    SoilSetting soil;
    soil.worst = soil.best = {clay_under_loam(1), clay_under_loam(2), even_soil(ohm_metres(60))};
    soil.whole_year = false;
    const tables::Catalogue& catalogue = support::catalogue();
    for (const double length : {1.2, 2.4, 4.8}) {
        const auto rods = rods_in_a_line(2, metres(length), millimetres(14.2), metres(length));
        const ThroughTheYear kept = through_the_year(catalogue, soil, rods, media);
        const ThroughTheYear fresh = through_the_year(catalogue, soil, rods);
        ASSERT_TRUE(kept.solved && fresh.solved);
        EXPECT_EQ(kept.low, fresh.low);
        EXPECT_EQ(kept.high, fresh.high);
        EXPECT_EQ(kept.worst_season, fresh.worst_season);
    }
    // Each soil bare and under each crust.
    EXPECT_EQ(media.count(), 3 * (1 + catalogue.electrode.seasons.size()));
}

}  // namespace
}  // namespace toft::study
