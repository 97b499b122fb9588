#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

const Demand& demand() { return support::catalogue().demand; }

TEST(LoadDemand, EveryShareIsAShareAndEveryRowIsCited) {
    EXPECT_GE(demand().allowances.size(), 30u);
    for (const Allowance& row : demand().allowances) {
        EXPECT_GT(row.rest.value, 0) << row.cell;
        EXPECT_LE(row.rest.value, row.second.value) << row.cell;
        EXPECT_LE(row.second.value, row.largest.value) << row.cell;
        EXPECT_LE(row.largest.value, 1) << row.cell;
        EXPECT_NE(row.rest.citation, nullptr) << row.cell;
        EXPECT_EQ(row.cell.find(' '), std::string::npos);
    }
}

TEST(LoadDemand, AHouseholdHasNoAllowanceForMotors) {
    EXPECT_EQ(find_allowance(demand(), "motors", "household"), nullptr);
    const Allowance* shop = find_allowance(demand(), "motors", "small shop or office");
    ASSERT_NE(shop, nullptr);
    EXPECT_EQ(shop->symbol, "motors");
    EXPECT_EQ(shop->cell, "motors.small.shop.or.office");
}

TEST(LoadDemand, KindsCountAsALoadOfTheTableOrStandOutsideIt) {
    EXPECT_EQ(load_of_kind(demand(), "socket ring").load, "final circuits");
    EXPECT_EQ(load_of_kind(demand(), "solar").load, load_generation);
    EXPECT_EQ(load_of_kind(demand(), "battery").load, load_storage);
    EXPECT_EQ(load_of_kind(demand(), "sauna").load, load_in_full);
    EXPECT_EQ(load_of_kind(demand(), "never heard of").load, load_in_full);
    EXPECT_TRUE(load_of_kind(demand(), "fixed load").alone);
    EXPECT_FALSE(load_of_kind(demand(), "lighting").alone);
}

TEST(LoadDemand, UsualRatingsAreThereForSomeKindsOnly) {
    ASSERT_NE(find_usual(demand(), "socket ring"), nullptr);
    EXPECT_EQ(find_usual(demand(), "socket ring")->rating.value, amperes(32));
    EXPECT_EQ(find_usual(demand(), "motor"), nullptr);
}

TEST(LoadDemand, ABuildingIsAHouseholdUnlessItsUseSaysOtherwise) {
    EXPECT_EQ(premises_of(demand(), "office"), "small shop or office");
    EXPECT_EQ(premises_of(demand(), "shed"), "household");
    EXPECT_EQ(premises_of(demand(), ""), "household");
}

TEST(LoadDemand, TailsAreTrustedByTheRowBelowThem) {
    EXPECT_EQ(find_tails(demand(), square_millimetres(10)), nullptr);
    EXPECT_EQ(find_tails(demand(), square_millimetres(16))->rating.value, amperes(60));
    EXPECT_EQ(find_tails(demand(), square_millimetres(24))->rating.value, amperes(60));
    EXPECT_EQ(find_tails(demand(), square_millimetres(50))->rating.value, amperes(100));
}

TEST(LoadDemand, ALoadThatNoRowHoldsAndATableWithoutRowsAreRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("demand/kind.csv", "pump,motors", "pump,water wheels")
                    .refused("demand/kind.csv", "no load of the table"));
    EXPECT_TRUE(SpoiltTables()
                    .keep_lines("demand/allowance.csv", 1)
                    .refused("demand/allowance.csv", "no allowance"));
    EXPECT_FALSE(SpoiltTables().remove("demand/tails.csv").faults().empty());
}

}  // namespace
}  // namespace toft::tables
