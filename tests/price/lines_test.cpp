#include "price/lines.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/questions.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace toft::price {
namespace {

struct Listener {
    static constexpr bool listens = true;
    void take(const PricedLine& line) { heard.push_back(line); }
    std::vector<PricedLine> heard;
};

TEST(Lines, EachIsQuantityTimesPriceToThePennyAndIsHeard) {
    Silent ledger;
    Listener listener;
    Lines<Silent, Listener> lines(ledger, support::demo_book(), listener);
    lines.begin(Part::ground);
    EXPECT_EQ(lines.some({"p", "clips", 3}, Item::clips, 7.13), pounds(7.84));  // 7.843
    ASSERT_EQ(listener.heard.size(), 1u);
    const PricedLine& line = listener.heard.front();
    EXPECT_EQ(line.part, Part::ground);
    EXPECT_STREQ(line.says, "clips");
    EXPECT_EQ(line.number, 3);
    EXPECT_EQ(line.quantity, 7.13);
    EXPECT_EQ(line.each, pounds(1.10));
    EXPECT_EQ(line.amount, pounds(7.84));
}

TEST(Lines, LabourIsHoursOfTheBookAtThePriceOfAnHour) {
    Silent ledger;
    Listener listener;
    Lines<Silent, Listener> lines(ledger, support::demo_book(), listener);
    const Pounds amount = lines.labour({"h", "hours", 0, "h"}, "digging", Item::hours_rod, 3.0);
    EXPECT_EQ(amount, pounds(3 * 0.75 * 46));
    EXPECT_EQ(listener.heard.front().sort, Sort::labour);
    EXPECT_EQ(listener.heard.front().quantity, 3 * 0.75);
    EXPECT_STREQ(listener.heard.front().says, "digging");
}

RC_GTEST_PROP(Lines, TheRecordingLedgerRoundsAsTheSilentOneDoesAndPrintsIt, ()) {
    const double count = support::number_between(0.01, 300);
    const auto item = static_cast<Item>(*rc::gen::inRange<std::size_t>(0, item_count));
    NoSink none;
    Silent silent;
    Recording recording;
    Lines<Silent, NoSink> quick(silent, support::demo_book(), none);
    Lines<Recording, NoSink> slow(recording, support::demo_book(), none);
    const auto stated = recording.stated({"n", "how many", 0, "m"}, count, "survey");
    const auto sum = recording.let({"P", "price"}, slow.some({"p", "it"}, item, stated));
    RC_ASSERT(sum.value == quick.some({"p", "it"}, item, count));
    RC_ASSERT(recording.lines().back().formula.find("penny(") == 0);
    RC_ASSERT(support::wrong_lines(recording.lines()) == std::vector<std::string>{});
}

TEST(WithoutDust, IsTheWholePennyNextToIt) {
    EXPECT_EQ(without_dust(pounds(0.1 + 0.2)), pounds(0.30));
}

}  // namespace
}  // namespace toft::price
