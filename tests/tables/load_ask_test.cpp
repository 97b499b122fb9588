#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadAsk, ValuesAreReadInRisingOrder) {
    const FindOut* fuse = find_out_for(support::catalogue().find_out, "/intake/service_fuse");
    EXPECT_EQ(fuse->values, (std::vector<double>{60, 80, 100}));
    EXPECT_TRUE(find_out_for(support::catalogue().find_out, "/intake/ze_ohm")->values.empty());
}

TEST(LoadAsk, ValuesThatFallAndStrangersAreRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("ask/find_out.csv", "anyone,60 80 100", "anyone,60 100 80")
                    .refused("ask/find_out.csv", "not any, nor rising figures: 60 100 80"));
    EXPECT_TRUE(SpoiltTables()
                    .change("ask/find_out.csv", "anyone,60 80 100", "anyone,sixty")
                    .refused("ask/find_out.csv", "not any, nor rising figures: sixty"));
    EXPECT_TRUE(SpoiltTables()
                    .change("ask/find_out.csv", "anyone,60 80 100", "neighbour,60 80 100")
                    .refused("ask/find_out.csv", "nobody known by that word: neighbour"));
}

}  // namespace
}  // namespace toft::tables
