#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadHandover, DeadTestsStandBeforeLiveOnes) {
    const auto& tests = support::catalogue().tests;
    ASSERT_GT(tests.size(), 10u);
    EXPECT_TRUE(tests.front().dead);
    EXPECT_FALSE(tests.back().dead);
    for (std::size_t i = 1; i < tests.size(); ++i) {
        EXPECT_FALSE(tests[i].dead && !tests[i - 1].dead) << tests[i].key;
        EXPECT_NE(tests[i].citation, nullptr);
    }
}

TEST(LoadHandover, ADeadTestAfterALiveOneIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("test/step.csv", "sequence,live,", "sequence,dead,")
                    .refused("test/step.csv", "dead test after a live one"));
    EXPECT_TRUE(SpoiltTables()
                    .change("test/step.csv", "sequence,live,", "sequence,asleep,")
                    .refused("test/step.csv", "neither dead nor live"));
}

}  // namespace
}  // namespace toft::tables
