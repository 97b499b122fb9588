#include "site/words.h"
#include "support/catalogue.h"
#include "support/spoilt_tables.h"
#include "tables/sheet.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadAddition, EveryFormIsAKindOfCircuitOrABuilding) {
    const auto& kinds = site::words<site::CircuitKind>();
    for (const AdditionRow& row : support::catalogue().additions) {
        const bool kind = std::find(kinds.begin(), kinds.end(), row.form) != kinds.end();
        EXPECT_TRUE(kind || row.form == "building") << row.key;
        EXPECT_NE(row.citation, nullptr);
    }
}

TEST(LoadAddition, WhatDrawsNothingIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("later/addition.csv", "hot tub,3000,", "hot tub,0,")
                    .refused("later/addition.csv", "draws something"));
}

}  // namespace
}  // namespace toft::tables
