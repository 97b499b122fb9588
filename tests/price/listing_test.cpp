#include "price/listing.h"

#include "support/catalogue.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::price {
namespace {

TEST(Listing, HasEveryRowOnceWithItsUse) {
    const auto rows = listed(support::demo_book(), support::catalogue());
    std::set<std::string> seen;
    for (const ListedRow& row : rows) {
        EXPECT_TRUE(seen.insert(row.item).second) << row.item;
        EXPECT_FALSE(row.use.empty());
        EXPECT_TRUE(row.priced);
        EXPECT_LE(row.low, row.net);
        EXPECT_GE(row.high, row.net);
    }
    EXPECT_TRUE(seen.count("cable 3x10"));
    EXPECT_TRUE(seen.count("breaker B 6 kA"));
    EXPECT_TRUE(seen.count("margin percent"));
}

TEST(Listing, ABookToBeginWithIsReadAsTheSameBook) {
    const Book& book = support::demo_book();
    const auto again = read_book(book.name, book_to_begin_with(listed(book, support::catalogue())),
                                 support::catalogue());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->amounts, book.amounts);
    EXPECT_EQ(again->cables, book.cables);
    EXPECT_EQ(again->devices, book.devices);
    EXPECT_EQ(again->high.amounts, book.high.amounts);
    EXPECT_NE(book_to_begin_with(listed(book, support::catalogue())).find("invented, replace"),
              std::string::npos);
}

TEST(FarFrom, NamesWhatIsOutsideHalfToTwice) {
    Book book = support::demo_book();
    EXPECT_TRUE(far_from(book, support::demo_book(), support::catalogue()).empty());
    book.amounts[static_cast<std::size_t>(Item::duct)] *= 2.1;
    book.amounts[static_cast<std::size_t>(Item::clips)] *= 0.6;
    book.amounts[static_cast<std::size_t>(Item::rod)] = 0;
    const auto far = far_from(book, support::demo_book(), support::catalogue());
    ASSERT_EQ(far.size(), 2u);
    EXPECT_EQ(far[0].item, "rod");
    EXPECT_EQ(far[1].item, "duct");
}

}  // namespace
}  // namespace toft::price
