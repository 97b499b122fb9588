#include "merge/order.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::merge {
namespace {

Json list(const std::string& letters) {
    Json made = Json::array();
    for (const char c : letters) made.push_back(std::string(1, c));
    return made;
}

/// The order of letters, when two people made these of `base`; each letter is an item.
std::string ordered(const std::string& base, const std::string& mine, const std::string& theirs) {
    const auto place = [](const std::string& in, char c) {
        const auto at = in.find(c);
        return at == std::string::npos ? std::nullopt : std::optional(at);
    };
    std::string all = mine;
    for (const char c : theirs) {
        if (all.find(c) == std::string::npos) all += c;
    }
    std::vector<Item> items;
    for (const char c : all) items.push_back({place(base, c), place(mine, c), place(theirs, c)});
    std::string result;
    for (const Item& item : in_order(items, list(mine), list(theirs))) {
        result += item.mine ? mine[*item.mine] : theirs[*item.theirs];
    }
    return result;
}

TEST(Order, WhoeverChangedItDecides) {
    EXPECT_EQ(ordered("abc", "abc", "abc"), "abc");
    EXPECT_EQ(ordered("abc", "cba", "abc"), "cba");
    EXPECT_EQ(ordered("abc", "abc", "bca"), "bca");
    EXPECT_EQ(ordered("abc", "cba", "bca"), "bca") << "theirs, when both did";
}

TEST(Order, WhatIsNewFollowsWhatItFollowed) {
    EXPECT_EQ(ordered("abc", "aXbc", "abcY"), "aXbcY");
    EXPECT_EQ(ordered("abc", "Xabc", "cbaY"), "XcbaY");
    EXPECT_EQ(ordered("", "X", "Y"), "XY");
    EXPECT_EQ(ordered("", "Y", "X"), "XY");
    EXPECT_EQ(ordered("ab", "abPQ", "abMN"), "abMNPQ") << "what came together stays so";
}

TEST(Order, WhatBothPutInAtOtherPlacesDoesNotHangOnWhoIsCalledMine) {
    EXPECT_EQ(ordered("a", "aXY", "aYX"), ordered("a", "aYX", "aXY"));
    EXPECT_EQ(ordered("ab", "Xab", "abX"), ordered("ab", "abX", "Xab"));
}

}  // namespace
}  // namespace toft::merge
