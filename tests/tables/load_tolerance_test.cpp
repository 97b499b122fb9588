#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadTolerance, EveryRowSaysWhoseWordItIs) {
    for (const ToleranceRow& row : support::catalogue().tolerances) {
        EXPECT_NE(row.citation, nullptr) << row.fact;
    }
}

TEST(LoadTolerance, AFigureThatMayBeNothingAndAStrangeSpreadAreRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("tolerance/usual.csv", "length,measured,2,", "length,measured,120,")
                    .refused("tolerance/usual.csv", "less than itself"));
    EXPECT_TRUE(SpoiltTables()
                    .change("tolerance/usual.csv", "measured,2,bell", "measured,2,round")
                    .refused("tolerance/usual.csv", "no such spread: round"));
}

}  // namespace
}  // namespace toft::tables
