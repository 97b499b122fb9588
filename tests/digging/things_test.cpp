#include "digging/things.h"

#include "drawing/measure.h"
#include "drawing/svg.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

using trench::Kind;
using trench::Lying;

TEST(Things, AreAsLargeAsTheirDiameter) {
    for (const Kind kind : {Kind::cable, Kind::duct, Kind::core, Kind::data}) {
        const Lying one{kind, "A1", "", millimetres(40), {millimetres(15)}};
        const drawing::Box box = drawing::box_of(lying_section(one, {100, 100}, 1000));
        EXPECT_NEAR(box.centre().x, 100, 1e-9);
        EXPECT_NEAR(box.width(), 40, 2);  // and the line around
    }
}

TEST(Things, CablesInADuctLieOnItsFloorInsideTheBore) {
    const Lying one{Kind::duct, "A1", "", millimetres(50), {millimetres(15), millimetres(8)}};
    for (const drawing::Item& item : lying_section(one, {0, 0}, 1000)) {
        const auto* circle = std::get_if<drawing::Circle>(&item.shape);
        ASSERT_NE(circle, nullptr);
        EXPECT_LE(drawing::length(circle->centre) + circle->radius, 25 + 1e-9);
        EXPECT_GE(circle->centre.y, 0);
    }
}

TEST(Things, WhatIsThereTodayLooksDifferent) {
    Lying one{Kind::cable, "A1", "", millimetres(20)};
    const auto inked = [&] {
        return drawing::to_svg({9, 9, "", "", {}, lying_section(one, {0, 0}, 1000)});
    };
    const std::string anew = inked();
    one.there = true;
    EXPECT_NE(inked(), anew);
}

}  // namespace
}  // namespace toft::digging
