#include "price/book.h"

#include "support/catalogue.h"
#include "support/examples.h"

#include <gtest/gtest.h>

namespace toft::price {
namespace {

std::string demo() { return std::string(tables::embedded_text("price/demo.csv")); }

/// The demo book with the first `from` replaced.
std::string changed(const std::string& from, const std::string& to) {
    std::string text = demo();
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

Outcome<Book> read(const std::string& text) {
    return read_book("a book", text, support::catalogue());
}

/// What the reader says against it; empty when it accepts.
std::string refusal(const std::string& text) {
    const auto book = read(text);
    if (book) return "";
    std::string says;
    for (const Fault& fault : book.error()) says += fault.pointer + " " + fault.says + "\n";
    return says;
}

TEST(Book, PricesEveryCableAndDeviceOfTheTables) {
    const auto book = read(demo());
    ASSERT_TRUE(book);
    EXPECT_EQ(book->name, "a book");
    ASSERT_EQ(book->cables.size(), support::catalogue().cables.size());
    ASSERT_EQ(book->devices.size(), support::catalogue().devices.size());
    for (const PoundsPerMetre& price : book->cables) EXPECT_GT(price.number(), 0);
    for (const Pounds& price : book->devices) EXPECT_GT(price.number(), 0);
    EXPECT_DOUBLE_EQ(book->amount(Item::labour_hour), 46);
    EXPECT_DOUBLE_EQ(book->amount(Item::vat_percent), 20);
}

TEST(Book, PricesStandBesideTheirRows) {
    const auto book = read(demo());
    ASSERT_TRUE(book);
    const auto& all = support::catalogue();
    const auto device = [&](const tables::Device& d) {
        return book->devices[static_cast<std::size_t>(&d - all.devices.data())].number();
    };
    const auto cable = [&](const tables::Cable& c) {
        return book->cables[static_cast<std::size_t>(&c - all.cables.data())].number();
    };
    EXPECT_DOUBLE_EQ(cable(support::cable(2, 1.5)), 1.30);
    EXPECT_DOUBLE_EQ(cable(support::cable(3, 10)), 7.10);
    EXPECT_DOUBLE_EQ(cable(support::cable(tables::Family::flat_twin_and_earth, 2, 2.5)), 1.05);
    EXPECT_LT(cable(support::cable(tables::Family::armoured_xlpe_aluminium, 4, 95)),
              cable(support::cable(4, 95)));
    EXPECT_DOUBLE_EQ(device(support::fuse(32)), 3.90);
    EXPECT_DOUBLE_EQ(device(support::breaker("B", 40, 6)), 6.80);
    EXPECT_DOUBLE_EQ(device(support::breaker("B", 50, 6)), 6.80);  // and an extra above 40 A
    EXPECT_TRUE(over_40_a(support::breaker("B", 50, 6)));
    EXPECT_FALSE(over_40_a(support::breaker("B", 40, 6)));
    EXPECT_FALSE(over_40_a(support::fuse(63)));
    EXPECT_DOUBLE_EQ(device(support::breaker("C", 32, 10)), 10.20);
}

TEST(Book, AMissingPriceIsAFaultThatNamesTheItem) {
    EXPECT_NE(refusal(changed("cable 3x10,", "cable 3x11,")).find("cable 3x10"), std::string::npos);
    EXPECT_NE(refusal(changed("cable flat twin and earth 2x4,", "cable flat 2x4,"))
                  .find("cable flat twin and earth 2x4"),
              std::string::npos);
    EXPECT_NE(refusal(changed("fuse 32,", "fuse 33,")).find("fuse 32"), std::string::npos);
    EXPECT_NE(refusal(changed("labour hour,", "labour,")).find("labour hour"), std::string::npos);
    EXPECT_NE(refusal(changed("breaker C 10 kA,", "breaker C,")).find("breaker C 10 kA"),
              std::string::npos);
}

TEST(Book, WhatIsNoPriceIsRefusedWithItsLine) {
    for (const char* wrong : {"cheap", "-1", "", "nan", "inf", "1.30 pounds"}) {
        const std::string says =
            refusal(changed("cable 2x1.5,m,1.30", std::string("cable 2x1.5,m,") + wrong));
        EXPECT_NE(says.find("a book:2"), std::string::npos) << wrong;
        EXPECT_NE(says.find("not a price"), std::string::npos) << wrong;
    }
}

TEST(Book, AllFaultsComeAtOnce) {
    const std::string says = refusal("item,unit,net_gbp,note\n");
    EXPECT_NE(says.find("cable 2x1.5"), std::string::npos);
    EXPECT_NE(says.find("fuse 5"), std::string::npos);
    EXPECT_NE(says.find("VAT percent"), std::string::npos);
}

}  // namespace
}  // namespace toft::price
