#include "ware/board_row.h"

#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

HandMade with_board(double circuits) {
    HandMade made;
    made.line(Part::far_end, "outbuilding board", 1, 74)
        .line(Part::far_end, "30 mA RCBO", circuits, 27);
    return made;
}

TEST(BoardRow, WaysAreCircuitsAndFeedsAndSpares) {
    const HandMade made = with_board(5);
    RunBill part = made.part();
    EXPECT_EQ(ways_words(part), "at least 5 ways");
    part.behind.feeds = {"Barn", "Stable"};
    part.behind.spare_ways = 3;
    EXPECT_EQ(ways_words(part), "at least 10 ways");
    const Row row = board_row({}, part).row;
    EXPECT_EQ(row.note, "Garage: 5 ways for circuits, 2 to feed Barn, Stable, 3 spare");
}

TEST(BoardRow, TheListCountsARunThatStartsThere) {
    HandMade made = with_board(2);
    const std::string to = made.run().to;
    HandMade next("Barn");
    next.run().from = to;
    next.run().to = "barn";
    const List list = list_of(support::catalogue(), made.job, {made.part(), next.part()});
    EXPECT_EQ(row_of(list, "consumer unit").size, "at least 3 ways");
    EXPECT_EQ(row_of(made.list(), "consumer unit").size, "at least 2 ways");
}

TEST(BoardRow, ABoardOnItsOwnEarthIsKeptFromTheArmourOfAnother) {
    HandMade made = with_board(2);
    EXPECT_EQ(row_of(made.list(), "consumer unit").what,
              "consumer unit in steel, with main switch");
    made.scheme.building.electrode = answer::ElectrodeAnswer{};
    const Row row = row_of(made.list(), "consumer unit");
    EXPECT_EQ(row.what, "consumer unit of insulating material, with main switch");
    EXPECT_NE(row.note.find("steel with armour and gland kept off"), std::string::npos);
    EXPECT_NE(row.note.find("RCD at the incomer"), std::string::npos);
    made.stretch().armoured = false;  // nothing of another earth comes in
    EXPECT_EQ(row_of(made.list(), "consumer unit").what,
              "consumer unit in steel, with main switch");
}

}  // namespace
}  // namespace toft::ware
