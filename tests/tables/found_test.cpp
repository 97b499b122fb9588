#include "tables/found.h"

#include "price/item.h"
#include "support/catalogue.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tables {
namespace {

const std::vector<FoundRow>& rows() { return support::catalogue().found; }

TEST(Found, EachWordOnceAtItsPlace) {
    const auto here = found_words(rows(), {"run"});
    EXPECT_EQ(here, (std::vector<std::string>{"cable near the surface", "flat cable in the ground",
                                              "joint in the ground"}));
    const auto both = found_words(rows(), {"house", "building"});
    EXPECT_EQ(std::set<std::string>(both.begin(), both.end()).size(), both.size());
}

TEST(Found, WhatFailsOrCautionsIsNoMereRecord) {
    ASSERT_FALSE(rows().empty());
    for (const FoundRow& row : rows()) {
        EXPECT_EQ(row.weight == "record", row.verdict == "meets") << row.found << row.at;
    }
}

TEST(Found, SomebodyIsToldOfWhatIsDangerousAtOnceAndOfNothingElse) {
    for (const FoundRow& row : rows()) {
        EXPECT_EQ(row.weight == "danger now", !row.tell.empty()) << row.found << row.at;
    }
}

TEST(Found, WhatIsPutRightHasAPriceInTheBook) {
    int priced = 0;
    for (const FoundRow& row : rows()) {
        if (row.item.empty()) continue;
        bool known = false;
        price::item_of(row.item, known);
        EXPECT_TRUE(known) << row.item;
        ++priced;
    }
    EXPECT_GT(priced, 4);
}

TEST(Found, OneFindingHasRoomForAllThatPutsThingsRight) {
    std::set<std::string> items;
    for (const FoundRow& row : rows()) items.insert(row.item);
    items.erase("");
    EXPECT_LE(items.size(), 7u);  // rules::most_remedies
}

/// Every way to build a run is spoken of by exactly one row of each word at each place, or by none
/// where the house's earth does not matter to it.
TEST(Found, NoWayToBuildIsSpokenOfTwice) {
    for (const FoundRow& a : rows()) {
        for (const FoundRow& b : rows()) {
            if (&a == &b || a.found != b.found || a.at != b.at) continue;
            const bool apart =
                (a.earthing != b.earthing && a.earthing != "any" && b.earthing != "any") ||
                (a.cable != b.cable && a.cable != "any" && b.cable != "any");
            EXPECT_TRUE(apart) << a.found << " at " << a.at;
        }
    }
}

}  // namespace
}  // namespace toft::tables
