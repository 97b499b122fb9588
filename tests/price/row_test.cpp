#include "price/row.h"

#include "support/catalogue.h"
#include "support/draws.h"

#include <gtest/gtest.h>

#include <map>
#include <string>

namespace toft::price {
namespace {

TEST(BookRow, CablesAreCalledByFamilyCoresAndSection) {
    EXPECT_EQ(cable_item(support::cable(3, 10)), "cable 3x10");
    EXPECT_EQ(cable_item(support::cable(tables::Family::flat_twin_and_earth, 2, 2.5)),
              "cable flat twin and earth 2x2.5");
    EXPECT_EQ(separate_item(support::conductor(10)), "separate 10");
}

TEST(BookRow, DevicesAreCalledByWhatDecidesTheirPrice) {
    EXPECT_EQ(device_item(support::fuse(32)), "fuse 32");
    EXPECT_EQ(device_item(support::breaker("B", 32)), device_item(support::breaker("B", 50)));
    EXPECT_EQ(device_item(support::breaker("C", 32, 10)), "breaker C 10 kA");
}

TEST(BookRow, NoTwoCablesShareAnItemAndEveryRowHasAUnit) {
    const auto& all = support::catalogue();
    std::map<std::string, int> times;
    for (std::size_t i = 0; i < all.cables.size(); ++i) {
        ++times[row_item(all, BookRow::cable(i))];
        EXPECT_STREQ(row_unit(BookRow::cable(i)), "m");
    }
    EXPECT_EQ(times.size(), all.cables.size());
    EXPECT_STREQ(row_unit(BookRow::device(0)), "each");
    EXPECT_EQ(row_item(all, BookRow::item(Item::duct)), "duct");
    EXPECT_STREQ(row_unit(BookRow::item(Item::duct)), "m");
}

}  // namespace
}  // namespace toft::price
