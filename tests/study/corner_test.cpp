#include "study/corner.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

TEST(Corner, TheWorseEndTakesTheHighFigureWhereLargeIsWorseAndTheLowWhereSmallIs) {
    const auto bounds = at_end(End::worse, 0.1, 0.35);
    EXPECT_EQ(bounds.most, 0.35);
    EXPECT_EQ(bounds.least, 0.1);
}

TEST(Corner, TheBetterEndIsTheOtherWayRound) {
    const auto bounds = at_end(End::better, 0.1, 0.35);
    EXPECT_EQ(bounds.most, 0.1);
    EXPECT_EQ(bounds.least, 0.35);
}

TEST(Corner, OneEndForAllIsOneFigure) {
    EXPECT_EQ(at_end(End::low, 0.1, 0.35).most, at_end(End::low, 0.1, 0.35).least);
    EXPECT_EQ(at_end(End::high, 0.1, 0.35).most, at_end(End::high, 0.1, 0.35).least);
}

TEST(Corner, AFactMayStandApartFromTheRest) {
    Corner corner;
    corner.except.emplace_back("/intake/ze_ohm", End::high);
    EXPECT_EQ(corner.at("/intake/ze_ohm"), End::high);
    EXPECT_EQ(corner.at("/intake/pscc_ka"), End::worse);
}

}  // namespace
}  // namespace toft::study
