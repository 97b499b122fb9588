#include "ware/drum.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::ware {
namespace {

const std::vector<tables::SoldRow>& sold() { return support::catalogue().ware.sold; }

std::string sold_as(std::vector<double> lengths) {
    std::vector<Metres> pieces;
    for (const double length : lengths) pieces.push_back(metres(length));
    return drums_words(drums_for(sold(), "cable", pieces), "drum");
}

TEST(Drum, PiecesAreCutFromTheFewestMetres) {
    EXPECT_EQ(sold_as({37}), "1 drum of 50 m, 13 m left over");
    EXPECT_EQ(sold_as({37, 23, 22}), "1 drum of 100 m, 18 m left over");
    EXPECT_EQ(sold_as({25, 25}), "1 drum of 50 m, 0 m left over");
    EXPECT_EQ(sold_as({120}), "1 drum of 500 m, 380 m left over");
}

TEST(Drum, PiecesAreNeverJoined) {
    // 60 m together, but no coil of 50 m holds both: two of 50 m and one of 100 m are the same
    // metres, and the one drum is taken.
    EXPECT_EQ(sold_as({30, 30}), "1 drum of 100 m, 40 m left over");
    EXPECT_EQ(sold_as({501}), "longer than any usual drum");
    EXPECT_EQ(drums_for(sold(), "cable", {}).count, 0);
}

TEST(Drum, DuctMayBeCoupled) {
    EXPECT_EQ(drums_words(coils_for(sold(), "duct", metres(60)), "drum"),
              "3 drums of 25 m, 15 m left over");
    EXPECT_EQ(drums_words(coils_for(sold(), "duct", metres(100)), "drum"),
              "2 drums of 50 m, 0 m left over");
    EXPECT_EQ(coils_for(sold(), "duct", metres(0)).count, 0);
}

TEST(Drum, WholeMetresAreNeverLess) {
    EXPECT_EQ(whole_metres(metres(36.92)).number(), 37);
    EXPECT_EQ(whole_metres(metres(37)).number(), 37);
}

RC_GTEST_PROP(Drum, WhatIsLeftIsWhatWasBoughtLessThePieces, ()) {
    const auto lengths = *rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 500));
    std::vector<Metres> pieces;
    double total = 0;
    for (const int length : lengths) {
        pieces.push_back(metres(length));
        total += length;
    }
    const Drums drums = drums_for(sold(), "cable", pieces);
    RC_ASSERT((drums.count == 0) == pieces.empty());
    RC_ASSERT(drums.left.number() >= 0);
    RC_ASSERT(drums.sold.number() * drums.count == total + drums.left.number());
}

}  // namespace
}  // namespace toft::ware
