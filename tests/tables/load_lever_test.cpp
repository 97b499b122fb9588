#include "price/item.h"
#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadLever, EveryCostIsAnItemOfTheBookOrSaidToBeNone) {
    for (const LeverRow& row : support::catalogue().levers.rows) {
        bool found = false;
        price::item_of(row.cost, found);
        EXPECT_TRUE(found || row.cost == "in the price" || row.cost == "not priced") << row.key;
        EXPECT_NE(row.citation, nullptr);
    }
}

TEST(LoadLever, AMissingMeasureOfWorthIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("lever/worth.csv", "small.cost", "little.cost")
                    .refused("lever/worth.csv", "no row small.cost"));
    EXPECT_TRUE(SpoiltTables()
                    .change("lever/worth.csv", "least.saving,1", "least.saving,one")
                    .refused("lever/worth.csv", "one"));
}

}  // namespace
}  // namespace toft::tables
