#include "ware/draft.h"

#include "study/scheme.h"
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
    made.stretch().laid = study::laid_word(study::Laid::doubled);
    EXPECT_EQ(bought_of(made.stretch()), 1);
    made.stretch().parallel = 1;
    made.stretch().laid = study::laid_word(study::Laid::kept);
    EXPECT_EQ(bought_of(made.stretch()), 0);
}

TEST(Draft, GlandsGoByTheStretchsCable) {
    HandMade made;
    made.line(Part::run, "gland pair medium", 1, 13.5);
    const auto rows = drafts(made);
    EXPECT_EQ(rows[0].row.what, "gland kit type CW for armoured cable");
    EXPECT_EQ(rows[0].row.size, "20");
    EXPECT_NE(rows[0].row.note.find("a 20 gland takes 12.5 to 20.9 mm"), std::string::npos);
}

TEST(Draft, DuctBringsACordThatThePriceHasNothingFor) {
    HandMade made;
    made.run().legs[0].method = site::LegMethod::buried_in_duct;
    made.line(Part::ground, "duct", 30, 3.6, 1);
    const auto rows = drafts(made);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].row.size, "50 mm, bore 38 mm");
    EXPECT_EQ(rows[1].row.what, "draw cord");
    EXPECT_FALSE(rows[1].row.amount);
    EXPECT_EQ(rows[1].row.lines, 0);
}

TEST(Draft, CleatsAreSpacedByTheCable) {
    HandMade made;
    made.line(Part::ground, "clips", 4, 1.1, 1);
    const auto row = drafts(made)[0];
    EXPECT_EQ(row.row.what, "cable cleats with fixings");
    EXPECT_EQ(row.row.size, "for 19.5 mm");
    EXPECT_EQ(row.count, 11);  // every 400 mm
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

TEST(Draft, SandFillsTheTrenchAroundTheCable) {
    HandMade made;
    made.line(Part::ground, "sand and tape", 20, 4.2, 1);
    // By hand: 0.3 m wide, 75 mm below, 100 mm above a cable of 19.5 mm, less the cable itself; 1.6
    // t a cubic metre and a tenth more. An estimator's sheet has 1.4 t for 150 mm in all without
    // waste.
    const double by_hand =
        (0.3 * (0.075 + 0.0195 + 0.1) - 3.14159265 / 4 * 0.0195 * 0.0195) * 20 * 1.6 * 1.1;
    EXPECT_NEAR(drafts(made)[0].tonnes, by_hand, 1e-6);
    made.run().legs.clear();
    EXPECT_NEAR(drafts(made)[0].tonnes, by_hand, 1e-6);
    made.scheme.run.stretches.clear();  // what lies there is not known
    EXPECT_EQ(drafts(made)[0].tonnes, 0);
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
