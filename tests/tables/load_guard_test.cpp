#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadGuard, RatingsAndLeakagesComeInAmperes) {
    const Guard& guard = support::catalogue().guard;
    EXPECT_EQ(find_need(guard, "sockets")->sensitivity, milliamperes(30));
    EXPECT_EQ(find_need(guard, "farm-rest")->sensitivity, milliamperes(300));
    for (const LoadLeakage& row : guard.leakages) {
        EXPECT_LE(row.low.value, row.high.value) << row.kind;
        EXPECT_LT(row.high.value, milliamperes(30)) << row.kind;
        EXPECT_NE(row.high.citation, nullptr) << row.kind;
    }
}

TEST(LoadGuard, AnAuthorityOrATypeThatIsNoneIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("guard/need.csv", "vehicle,30,standard", "vehicle,30,custom")
                    .refused("guard/need.csv", "no such kind of authority: custom"));
    EXPECT_TRUE(SpoiltTables()
                    .change("guard/basis.csv", "pair,standard", "pair,custom")
                    .refused("guard/basis.csv", "no such kind of authority: custom"));
    EXPECT_TRUE(SpoiltTables()
                    .change("guard/type.csv", "motor,A,F,B", "motor,AC,F,B")
                    .refused("guard/type.csv", "no such type: AC"));
    EXPECT_TRUE(SpoiltTables()
                    .change("guard/leakage.csv", "freezer,0.25", "freezer,little")
                    .refused("guard/leakage.csv", "little"));
}

}  // namespace
}  // namespace toft::tables
