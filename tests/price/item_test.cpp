#include "price/item.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace toft::price {
namespace {

TEST(Item, EveryItemHasAWordOfItsOwnThatFindsIt) {
    std::set<std::string> words;
    for (std::size_t i = 0; i < item_count; ++i) {
        const Item item = static_cast<Item>(i);
        EXPECT_TRUE(words.insert(item_word(item)).second) << item_word(item);
        bool found = false;
        EXPECT_EQ(item_of(item_word(item), found), item);
        EXPECT_TRUE(found) << item_word(item);
    }
}

TEST(Item, TheFirstAndTheLastStandWhereTheyShould) {
    EXPECT_STREQ(item_word(Item::gland_pair_small), "gland pair small");
    EXPECT_STREQ(item_word(Item::load_management), "load management unit");
    EXPECT_STREQ(item_word(Item::tracing_a_borrowed_neutral), "tracing a borrowed neutral");
    EXPECT_EQ(static_cast<std::size_t>(Item::margin_percent) + 1, item_count);
}

TEST(Item, UnknownWordsAreNotFound) {
    bool found = true;
    item_of("gold", found);
    EXPECT_FALSE(found);
    found = true;
    item_of("", found);
    EXPECT_FALSE(found);
}

}  // namespace
}  // namespace toft::price
