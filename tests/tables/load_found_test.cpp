#include "support/catalogue.h"
#include "tables/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

TEST(LoadFound, EveryRowIsCitedAndADashIsNothing) {
    const auto& rows = support::catalogue().found;
    ASSERT_FALSE(rows.empty());
    for (const FoundRow& row : rows) {
        EXPECT_NE(row.citation, nullptr) << row.found;
        EXPECT_NE(row.item, "-");
        EXPECT_NE(row.tell, "-");
        EXPECT_FALSE(row.first.empty());
    }
}

TEST(LoadFound, ARodJoinedToAnOwnEarthIsADangerAndToTheHousesARecord) {
    int seen = 0;
    for (const FoundRow& row : support::catalogue().found) {
        if (row.found != "rod joined to supply earth") continue;
        EXPECT_EQ(row.weight, row.earthing == "own electrode" ? "danger" : "record");
        ++seen;
    }
    EXPECT_EQ(seen, 3) << "two ways to build it, and the house";
}

}  // namespace
}  // namespace toft::tables
