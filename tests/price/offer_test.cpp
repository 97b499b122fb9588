#include "price/offer.h"

#include "support/catalogue.h"
#include "support/examples.h"

#include <gtest/gtest.h>

#include <string>

namespace toft::price {
namespace {

/// The demo book without the rows that begin so.
std::string without(const std::string& beginning) {
    const std::string text(tables::embedded_text("price/demo.csv"));
    std::string left;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at) + 1;
        if (text.compare(at, beginning.size(), beginning) != 0) left += text.substr(at, end - at);
        at = end;
    }
    return left;
}

class Offer : public testing::Test {
protected:
    void take(const std::string& text) {
        auto read = read_book("my-book.csv", text, catalogue_);
        ASSERT_TRUE(read);
        book_ = std::move(*read);
        offer_only_priced(book_, catalogue_);
    }
    tables::Catalogue catalogue_ =
        support::need(tables::load_catalogue(tables::embedded_files()), "the tables");
    Book book_;
};

TEST_F(Offer, ACompleteBookLeavesNothingOut) {
    take(std::string(tables::embedded_text("price/demo.csv")));
    EXPECT_EQ(left_out_words(book_, catalogue_), "");
    EXPECT_TRUE(unpriced_items(book_, catalogue_).empty());
}

TEST_F(Offer, WhatIsNotPricedIsNotOfferedAndIsNamed) {
    take(without("cable 3x"));
    for (const tables::Cable& cable : catalogue_.cables) {
        const bool gone = cable.family == tables::Family::armoured_xlpe_copper && cable.cores == 3;
        EXPECT_EQ(cable.offered, !gone);
    }
    const std::string words = left_out_words(book_, catalogue_);
    EXPECT_NE(words.find("my-book.csv"), std::string::npos) << words;
    EXPECT_NE(words.find("11 of armoured XLPE copper cables"), std::string::npos) << words;
    EXPECT_EQ(unpriced_items(book_, catalogue_).size(), 11u);
    EXPECT_EQ(unpriced_items(book_, catalogue_).front(), "cable 3x1.5");
}

TEST_F(Offer, DevicesGoByTheirSort) {
    take(without("fuse BS 88-2"));
    const std::string words = left_out_words(book_, catalogue_);
    EXPECT_NE(words.find("of BS 88-2 fuses"), std::string::npos) << words;
    EXPECT_EQ(words.find("breakers"), std::string::npos) << words;
}

}  // namespace
}  // namespace toft::price
