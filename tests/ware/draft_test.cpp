#include "ware/draft.h"

#include "ware/bills.h"
#include "ware/pence.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

std::vector<Draft> drafts(const HandMade& made) {
    return drafts_of(support::catalogue(), made.job, made.part());
}

TEST(Draft, CableIsCalledAsAtTheCounterWithItsBend) {
    HandMade made;
    made.line(Part::run, "cable 3x10", 36.92, 7.10);
    const auto rows = drafts(made);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].row.what, "armoured cable BS 5467, copper, XLPE");
    EXPECT_EQ(rows[0].row.size, "3-core 10 mm²");
    EXPECT_EQ(rows[0].row.note, "19.5 mm over all; bend no tighter than 117 mm (6 × 19.5 mm)");
    ASSERT_EQ(rows[0].pieces.size(), 1u);
}

TEST(Draft, APairOfCablesIsTwoPieces) {
    HandMade made;
    made.stretch().parallel = 2;
    made.line(Part::run, "cable 3x10", 73.84, 7.10);
    EXPECT_EQ(drafts(made)[0].pieces.size(), 2u);
}

TEST(Draft, GlandsGoByTheStretchsCable) {
    HandMade made;
    made.line(Part::run, "gland pair medium", 1, 13.5);
    const auto rows = drafts(made);
    EXPECT_EQ(rows[0].row.what, "gland kit type CW for armoured cable");
    EXPECT_EQ(rows[0].row.size, "size 20");
    EXPECT_NE(rows[0].row.note.find("a 20 gland takes 12.5 to 20.9 mm"), std::string::npos);
}

TEST(Draft, CablesOfCircuitsStandWithTheirClips) {
    HandMade made;
    made.line(Part::far_end, "cable flat twin and earth 2x2.5", 18, 1.05, 2)
        .line(Part::far_end, "clips", 18, 1.1, 2);
    const auto rows = drafts(made);
    EXPECT_EQ(rows[0].row.group, Group::circuits);
    EXPECT_EQ(rows[1].row.group, Group::circuits);
    EXPECT_EQ(rows[0].row.size, "2-core and earth 2.5 mm²");
}

TEST(Draft, WhatIsPricedOnTopOfSomethingGoesIntoItsRow) {
    HandMade made;
    made.scheme.run.device = {"BS EN 60898", "B", "breaker", 50, 6};
    made.line(Part::house_end, "breaker B 6 kA", 1, 6.8)
        .line(Part::house_end, "breaker over 40 A extra", 1, 4.5)
        .line(Part::house_end, "delayed RCD", 1, 88)
        .line(Part::house_end, "four-pole RCD extra", 1, 46)
        .line(Part::far_end, "outbuilding board", 1, 74)
        .line(Part::far_end, "three-phase board extra", 1, 118);
    const auto rows = drafts(made);
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(pence(*rows[0].row.amount), 1130);
    EXPECT_EQ(rows[0].row.lines, 2);
    EXPECT_EQ(pence(*rows[1].row.amount), 13400);
    EXPECT_NE(rows[1].row.what.find("four poles"), std::string::npos);
    EXPECT_EQ(pence(*rows[2].row.each), 19200);
}

TEST(Draft, ASurchargeWithNothingToGoOntoStaysARow) {
    HandMade made;
    made.line(Part::house_end, "three-phase board extra", 1, 118);
    const auto rows = drafts(made);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(pence(*rows[0].row.amount), 11800);
}

TEST(Draft, AnItemWithoutWordsGoesByItsNameInTheBook) {
    HandMade made;
    made.line(Part::remedies, "bridge of sighs", 1, 12);
    const auto rows = drafts(made);
    EXPECT_EQ(rows[0].row.what, "bridge of sighs");
    EXPECT_EQ(rows[0].row.group, Group::put_right);
}

TEST(Draft, SizesAreTakenFromTheAnswerWhereItHasThem) {
    HandMade made;
    made.scheme.run.rcd = answer::RcdAnswer{100, "A", true, {}, ""};
    made.line(Part::house_end, "delayed RCD", 1, 88)
        .line(Part::ground, "tray", 6, 11.5, 1)
        .line(Part::far_end, "outbuilding board", 1, 74)
        .line(Part::far_end, "30 mA RCBO", 5, 27)
        .line(Part::far_end, "rod", 2, 14.5);
    const List list = made.list();
    EXPECT_EQ(row_of(list, "residual current device").size, "100 mA type A");
    EXPECT_EQ(row_of(list, "cable tray").size, "for 19.5 mm");
    EXPECT_EQ(row_of(list, "consumer unit").size, "at least 5 ways");
    EXPECT_EQ(row_of(list, "earth rod").size, "1.2 m");
}

TEST(Draft, ABondIsCutFromGreenAndYellow) {
    HandMade made;
    made.line(Part::far_end, "separate 10", 6, 2.2);
    const auto row = drafts(made)[0].row;
    EXPECT_EQ(row.size, "10 mm²");
    EXPECT_EQ(row.note, "bonding conductors");
}

}  // namespace
}  // namespace toft::ware
