#include "terrain/figures.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

TEST(Figures, HaveTwoDigitsAndWholeFiguresFromTenOn) {
    EXPECT_EQ(figure_words(0.2468), "0.25");
    EXPECT_EQ(figure_words(8.34), "8.3");
    EXPECT_EQ(figure_words(64.9), "65");
    EXPECT_EQ(figure_words(155.2), "155");
    EXPECT_EQ(figure_words(1666.7), "1667");
}

TEST(Figures, WhatIsNoNumberIsNotKnown) {
    EXPECT_EQ(figure_words(no_number), "not known");
    EXPECT_EQ(figure_words(no_end), "no end");
    EXPECT_EQ(metre_words(no_number), "not known");
    EXPECT_EQ(load_words(no_number), "not known");
    EXPECT_EQ(share_words(no_end), "not known");
    EXPECT_EQ(range_words(no_number, no_number, "Ω"), "not known");
    EXPECT_EQ(range_words(no_number, 3, "Ω"), "not known");
    EXPECT_EQ(range_words(4, no_end, "Ω"), "4 Ω or more, without end");
    EXPECT_EQ(share_range_words(0.1, no_number), "not known");
}

TEST(Figures, ARangeOfOneFigureIsThatFigure) {
    EXPECT_EQ(range_words(31, 52, "Ω"), "31 to 52 Ω");
    EXPECT_EQ(range_words(31.1, 31.4, "Ω"), "31 Ω");
    EXPECT_EQ(share_range_words(0.052, 0.094), "5.2 to 9.4 %");
    EXPECT_EQ(share_range_words(0, 0.094), "0 to 9.4 %");
    EXPECT_EQ(share_range_words(0.0002, 0.094), "under 0.1 % to 9.4 %");
}

TEST(Figures, LoadsAreInWattsBelowAKilowatt) {
    EXPECT_EQ(load_words(300), "300 W");
    EXPECT_EQ(load_words(5200), "5.2 kW");
    EXPECT_EQ(metre_words(12.46), "12.5 m");
    EXPECT_EQ(share_words(0.217), "22 %");
    EXPECT_EQ(share_words(0.0004), "under 0.1 %");
}

}  // namespace
}  // namespace toft::terrain
