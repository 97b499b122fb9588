#include "tables/ware.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::tables {
namespace {

using support::SpoiltTables;

const Ware& ware() { return support::catalogue().ware; }

TEST(Ware, IsReadInMetresAndShares) {
    ASSERT_FALSE(ware().glands.empty());
    EXPECT_EQ(ware().glands.front().size, "20S");
    EXPECT_DOUBLE_EQ(ware().glands.front().over_to.number(), 0.0159);
    EXPECT_DOUBLE_EQ(ware().diameter_spread.value, 0.05);
    EXPECT_DOUBLE_EQ(ware().duct_fill.value, 0.35);
    EXPECT_EQ(ware().gland_types[static_cast<std::size_t>(GlandPlace::outdoors)].type, "CW");
    EXPECT_STREQ(gland_place_word(GlandPlace::wet), "wet");
}

TEST(Ware, GlandsGrowAndOverlapSoThatNoCableFallsBetween) {
    for (std::size_t i = 1; i < ware().glands.size(); ++i) {
        EXPECT_LT(ware().glands[i].over_from, ware().glands[i - 1].over_to);
        EXPECT_LT(ware().glands[i - 1].over_to, ware().glands[i].over_to);
    }
}

TEST(Ware, EverySingleCoreThatIsSoldHasADiameter) {
    for (const Conductor& sold : support::catalogue().separates) {
        EXPECT_TRUE(std::any_of(ware().singles.begin(), ware().singles.end(),
                                [&](const SingleRow& r) { return r.section == sold.section; }))
            << sold.section.number();
    }
}

TEST(Ware, NonsenseIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("ware/gland_type.csv", "\nwet,", "\nsea,")
                    .refused("ware/gland_type.csv", "no place of a gland"));
    EXPECT_TRUE(SpoiltTables()
                    .change("ware/constant.csv", "duct.fill,", "duct.full,")
                    .refused("ware/constant.csv", "no row duct.fill"));
    EXPECT_TRUE(SpoiltTables()
                    .change("ware/build.csv", "\narmoured XLPE copper,", "\nrope,")
                    .refused("ware/build.csv", "no such family"));
}

}  // namespace
}  // namespace toft::tables
