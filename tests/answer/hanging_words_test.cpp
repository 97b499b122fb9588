#include "answer/hanging_words.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

PieceAnswer sound(double low, double high, const char* words, double from, double to) {
    return {low, high, true, words, words, from, to};
}

PieceAnswer nothing(double low, double high) { return {low, high, false, "", "", 0, 0}; }

UnknownAnswer fact(const char* unit, std::vector<PieceAnswer> pieces) {
    UnknownAnswer u;
    u.unit = unit;
    u.pieces = std::move(pieces);
    return u;
}

TEST(HangingWords, AFactThatDoesNotMatterHasNone) { EXPECT_EQ(hanging_words(fact("ohm", {})), ""); }

TEST(HangingWords, SayWhereTheAnswerSwitchesAndWhatItCosts) {
    EXPECT_EQ(hanging_words(fact("ohm", {sound(0.1, 0.6199, "armour", 1840, 1840),
                                         sound(0.6202, 0.8, "separate", 1924, 1924)})),
              "up to 0.62 ohm: armour, £1840; above 0.62 ohm: separate, £84 more");
    EXPECT_EQ(hanging_words(fact("m", {sound(10, 19.9, "thick", 900, 900),
                                       sound(20.1, 29.9, "thin", 850, 850), nothing(30.1, 40)})),
              "up to 20 m: thick, £900; from 20 to 30 m: thin, £50 less; above 30 m: nothing is "
              "sound");
}

TEST(HangingWords, ALengthThatIsBoughtHasTwoPrices) {
    EXPECT_EQ(hanging_words(fact("m", {sound(20, 30, "cable", 1000, 1300)})),
              "throughout: cable, £1000 to £1300");
}

TEST(HangingWords, ANoAndAYesNeedNoFigures) {
    EXPECT_EQ(hanging_words(fact("no or yes", {sound(0, 0, "thin", 700, 700),
                                               sound(1, 1, "thick", 700.2, 700.2)})),
              "if no: thin, £700; if yes: thick, at the same price");
}

TEST(HangingWords, PiecesOfSizesEndOnSizes) {
    UnknownAnswer u =
        fact("mm2", {sound(0, 6, "rod", 1699, 1699), sound(10, 10, "core", 1539, 1539)});
    u.stepped = true;
    EXPECT_EQ(hanging_words(u), "up to 6 mm2: rod, £1699; at 10 mm2: core, £160 less");
}

TEST(HangingWords, WhatHoldsOnlyWithOthersSaysSo) {
    UnknownAnswer u = fact("m", {nothing(0, 2.4), sound(2.5, 10, "rod", 900, 900)});
    u.together = true;
    EXPECT_EQ(hanging_words(u).rfind("once other facts are known to be well: ", 0), 0u);
}

}  // namespace
}  // namespace toft::answer
