#include "tables/guard.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tables {
namespace {

TEST(Guard, RowsAreFoundByTheirKeyAndByNoOther) {
    const Guard& guard = support::catalogue().guard;
    for (const GuardNeed& row : guard.needs) {
        EXPECT_EQ(find_need(guard, row.footing.key), &row);
    }
    for (const Footing& row : guard.footings) EXPECT_EQ(find_footing(guard, row.key), &row);
    EXPECT_EQ(find_need(guard, "socket"), nullptr);
    EXPECT_EQ(find_footing(guard, ""), nullptr);
}

TEST(Guard, EveryKindHasATypeAndALeakage) {
    const Guard& guard = support::catalogue().guard;
    std::set<std::string> types;
    std::set<std::string> leakages;
    for (const LoadType& row : guard.types) types.insert(row.kind);
    for (const LoadLeakage& row : guard.leakages) leakages.insert(row.kind);
    EXPECT_EQ(types, leakages);
    EXPECT_GT(types.size(), 10u);
}

}  // namespace
}  // namespace toft::tables
