#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadWare, ATrenchIsReadInMetresAndShares) {
    const TrenchSizes& sizes = support::catalogue().trench.sizes;
    EXPECT_DOUBLE_EQ(sizes.width.value.number(), 0.3);
    EXPECT_DOUBLE_EQ(sizes.bulking.value, 0.25);
    EXPECT_DOUBLE_EQ(sizes.sand_kg_m3.value, 1600);
    EXPECT_DOUBLE_EQ(sizes.position_doubt.value.number(), 0.5);
    EXPECT_NE(sizes.tape_above.citation, nullptr);
}

TEST(LoadWare, TapeLiesWellAboveTheSandThatCoversTheCable) {
    const TrenchSizes& sizes = support::catalogue().trench.sizes;
    EXPECT_GT(sizes.tape_above.value.number(), sizes.bedding_above.value.number());
}

TEST(LoadWare, EverySurfaceIsMadeGood) {
    for (const char* surface :
         {"lawn", "bed", "path", "drive", "patio", "field", "shared path", "road"}) {
        int rows = 0;
        for (const MadeGood& row : support::catalogue().trench.made_good) {
            rows += row.surface == surface;
        }
        EXPECT_EQ(rows, 1) << surface;
    }
}

TEST(LoadWare, NonsenseOfATrenchIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("trench/dimension.csv", "width,300,mm", "width,300,m")
                    .refused("trench/dimension.csv", "width is stated in mm"));
    EXPECT_TRUE(SpoiltTables()
                    .change("trench/dimension.csv", "bulking,25,%", "bulge,25,%")
                    .refused("trench/dimension.csv", "no row bulking"));
    EXPECT_TRUE(SpoiltTables()
                    .change("trench/dimension.csv", "width,300,mm", "width,0,mm")
                    .refused("trench/dimension.csv", "more than nothing"));
}

}  // namespace
}  // namespace toft::tables
