#include "price/book.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/examples.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

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
    std::string says;
    for (const Fault& fault : look_at_book("a book", text, support::catalogue()).faults) {
        says += fault.says + (fault.nearest.empty() ? "" : " (" + fault.nearest + "?)") + "\n";
    }
    return says;
}

bool holds(const std::string& text, const char* words) {
    return text.find(words) != std::string::npos;
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

TEST(Book, ACableOrDeviceWithoutAPriceIsNoFaultAndHasNone) {
    const auto book = read(changed("cable 3x10,m,7.10,6.39,8.17,invented\n", ""));
    ASSERT_TRUE(book);
    const auto index =
        static_cast<std::size_t>(&support::cable(3, 10) - support::catalogue().cables.data());
    EXPECT_TRUE(std::isnan(book->cables[index].number()));
    EXPECT_TRUE(std::isnan(book->low.cables[index].number()));
}

TEST(Book, WhatEveryJobMayNeedIsAFaultThatNamesAllThatIsMissing) {
    const std::string header = "item,unit,net_gbp\n";
    const std::string says = refusal(header);
    for (const char* item : {"labour hour", "outbuilding board", "VAT percent", "separate 35"}) {
        EXPECT_TRUE(holds(says, item)) << item;
    }
    EXPECT_FALSE(holds(says, "cable 2x1.5"));
    EXPECT_FALSE(holds(says, "margin percent")) << "none is none";
    EXPECT_EQ(refusal(changed("margin percent,%,0.00", "years counted,years,20")),
              "a book, line 247: years counted stands on line 227 already; keep one of them\n");
}

TEST(Book, WhatIsNoPriceIsRefusedWithItsLineAndTheRemedy) {
    const std::pair<const char*, const char*> cases[] = {
        {"cheap", "bare number"},     {"-1", "below nothing"},
        {"", "nothing is written"},   {"nan", "bare number"},
        {"inf", "bare number"},       {"1.30 pounds", "bare number"},
        {"£1.30", "sums are pounds"}, {"\"1,300.00\"", "without a comma"},
        {"1e2", "bare number"},       {"1.2.3", "bare number"},
        {"2000000", "million"},       {".", "bare number"}};
    for (const auto& [wrong, remedy] : cases) {
        const std::string says = refusal(
            changed("cable 2x1.5,m,1.30,1.17,1.50", std::string("cable 2x1.5,m,") + wrong + ",,"));
        EXPECT_TRUE(holds(says, "a book, line 2:")) << wrong << says;
        EXPECT_TRUE(holds(says, "not a price")) << wrong << says;
        EXPECT_TRUE(holds(says, remedy)) << wrong << says;
    }
}

TEST(Book, WrongItemsUnitsAndRangesAreSaidAllAtOnce) {
    std::string text = changed("duct,m,3.60,3.24,4.32", "duct,roll,3.60,4.24,4.32");
    text += "labour hours,h,46,,,\nclips,m,1,,,\n";
    const std::string says = refusal(text);
    EXPECT_TRUE(holds(says, "duct goes by the unit m, not by roll")) << says;
    EXPECT_TRUE(holds(says, "duct: low_gbp is at most the price")) << says;
    EXPECT_TRUE(holds(says, "“labour hours”")) << says;
    EXPECT_TRUE(holds(says, "(labour hour?)")) << says;
    EXPECT_TRUE(holds(says, "clips stands on line")) << says;
    EXPECT_TRUE(holds(refusal("item,net_gbp\n"), "no column unit"));
    EXPECT_TRUE(holds(refusal(changed("VAT percent,%,20.00,,", "VAT percent,%,20.00,17,22")),
                      "has no low and high"));
}

TEST(Book, HabitsOfSpreadsheetsAreTakenAsTheyCome) {
    std::string text = "\xEF\xBB\xBF" + demo() + ",,,,,\n\r\n \n";
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2) {
        text.insert(at, "\r");
    }
    text.replace(text.find("cable 2x1.5"), 11, "\" cable 2x1.5 \"");
    const auto book = read(text);
    EXPECT_EQ(refusal(text), "");
    ASSERT_TRUE(book);
    EXPECT_EQ(book->cables, read(demo())->cables);
    const std::string semicolons = refusal("item;unit;net_gbp\nduct;m;3,60\n");
    EXPECT_TRUE(holds(semicolons, "semicolons")) << semicolons;
    EXPECT_FALSE(holds(semicolons, "labour hour")) << "of a table that is not read";
}

TEST(Book, ColumnsStandInAnyOrderAndTheRangeMayBeLeftOut) {
    const auto narrow =
        look_at_book("a book", "net_gbp,note,item,unit\n3.60,x,duct,m\n", support::catalogue());
    EXPECT_DOUBLE_EQ(narrow.book.amount(Item::duct), 3.60);
    EXPECT_DOUBLE_EQ(at_low(narrow.book).amount(Item::duct), 3.60);
    const auto book = read(demo());
    ASSERT_TRUE(book);
    EXPECT_DOUBLE_EQ(at_low(*book).amount(Item::duct), 3.24);
    EXPECT_DOUBLE_EQ(at_high(*book).amount(Item::duct), 4.32);
    EXPECT_DOUBLE_EQ(at_high(*book).amount(Item::vat_percent), 20);
}

RC_GTEST_PROP(Book, AMarginRaisesEachPriceToWithinHalfAPennyAndNothingElse, ()) {
    const double margin = *rc::gen::inRange(1, 400) / 10.0;
    const auto plain = read(demo());
    const auto book =
        read(changed("margin percent,%,0.00", "margin percent,%," + std::to_string(margin)));
    RC_ASSERT(plain && book);
    for (std::size_t i = 0; i < item_count; ++i) {
        const auto item = static_cast<Item>(i);
        if (item == Item::margin_percent) continue;
        const double share = facts_of(item).bought ? margin / 100 : 0;
        RC_ASSERT(std::fabs(book->amount(item) - plain->amount(item) * (1 + share)) <= 0.00501);
        RC_ASSERT(book->cost.amounts[i] == plain->amounts[i]);
    }
    for (std::size_t i = 0; i < book->cables.size(); ++i) {
        const double cost = plain->cables[i].number();
        RC_ASSERT(std::fabs(book->cables[i].number() - cost * (1 + margin / 100)) <= 0.00501);
        RC_ASSERT(book->cost.cables[i] == plain->cables[i]);
        RC_ASSERT(book->low.cables[i] <= book->cables[i]);
        RC_ASSERT(book->high.cables[i] >= book->cables[i]);
    }
}

}  // namespace
}  // namespace toft::price
