#include "print/sheet.h"

#include "drawing/scene.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::print {
namespace {

using drawing::mm_of_units;
using drawing::units_of_mm;

TEST(Sheet, AWideDrawingLiesAtItsSizeWhenItFits) {
    const Sheet sheet = sheet_for(units_of_mm(287), units_of_mm(100)).value();
    EXPECT_EQ(sheet.wide, 297);
    EXPECT_EQ(sheet.high, 210);
    EXPECT_DOUBLE_EQ(sheet.scale, 1);
    EXPECT_NEAR(sheet.corner.x, 5, 1e-9);
    EXPECT_NEAR(sheet.corner.y, 55, 1e-9);
}

TEST(Sheet, AHighDrawingStands) {
    const Sheet sheet = sheet_for(units_of_mm(100), units_of_mm(250)).value();
    EXPECT_EQ(sheet.wide, 210);
    EXPECT_EQ(sheet.high, 297);
    EXPECT_EQ(sheet.scale, 1);
}

TEST(Sheet, ALargeDrawingIsMadeToFit) {
    const Sheet sheet = sheet_for(1400, 990).value();
    EXPECT_EQ(sheet.wide, 297);
    EXPECT_NEAR(sheet.scale, 200 / mm_of_units(990), 1e-12);
}

RC_GTEST_PROP(Sheet, AnyDrawingStaysInsideTheMargins, ()) {
    const auto wide = *rc::gen::inRange(1, 20000);
    const auto high = *rc::gen::inRange(1, 20000);
    const Sheet sheet = sheet_for(wide, high).value();
    RC_ASSERT(sheet.scale > 0 && sheet.scale <= 1);
    RC_ASSERT(sheet.corner.x >= sheet_margin - 1e-9 && sheet.corner.y >= sheet_margin - 1e-9);
    const double right = sheet.corner.x + mm_of_units(wide) * sheet.scale;
    const double foot = sheet.corner.y + mm_of_units(high) * sheet.scale;
    RC_ASSERT(right <= sheet.wide - sheet_margin + 1e-9);
    RC_ASSERT(foot <= sheet.high - sheet_margin + 1e-9);
}

TEST(Sheet, WhatHasNoSizeIsRefused) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double side : {0.0, -1.0, 2e7, nan, std::numeric_limits<double>::infinity()}) {
        EXPECT_EQ(sheet_for(side, 100).error().front().code, "no-size");
        EXPECT_EQ(sheet_for(100, side).error().front().code, "no-size");
    }
}

TEST(Sheet, OfADrawingAloneHasItsSize) {
    const Sheet sheet = sheet_of(360, 1200).value();
    EXPECT_DOUBLE_EQ(sheet.wide, mm_of_units(360));
    EXPECT_DOUBLE_EQ(sheet.high, mm_of_units(1200));
    EXPECT_EQ(sheet.scale, 1);
    EXPECT_EQ(sheet.corner, drawing::Point{});
    for (const double side : {0.0, -1.0, 1.1e4}) {
        EXPECT_EQ(sheet_of(360, side).error().front().code, "no-size") << side;
        EXPECT_EQ(sheet_of(side, 360).error().front().code, "no-size") << side;
    }
}

}  // namespace
}  // namespace toft::print
