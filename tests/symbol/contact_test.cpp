#include "symbol/contact.h"

#include "drawing/measure.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(Contact, TheBladeStandsOpen) {
    for (const auto& draw : {switch_disconnector, circuit_breaker}) {
        const Items items = draw({{100, 50}, {0, 1}}, pen_new());
        bool slanted = false;
        for (const Line& line : all_of<Line>(items)) {
            const Point way = line.to - line.from;
            slanted = slanted || (way.y < -15 && way.x < -5);
            const bool closes =
                line.from.x == 100 && line.to.x == 100 && length(way) > contact_length / 2;
            EXPECT_FALSE(closes) << "the gap is bridged";
        }
        EXPECT_TRUE(slanted);
    }
}

TEST(Contact, OnlyTheSwitchHasTheRingAndOnlyTheBreakerTheCross) {
    const Axis axis{{0, 0}, {0, 1}};
    EXPECT_EQ(all_of<Circle>(switch_disconnector(axis, pen_new())).size(), 1u);
    EXPECT_EQ(all_of<Circle>(circuit_breaker(axis, pen_new())).size(), 0u);
    // Two leads and a blade; then the bar across, or the two lines of the cross.
    EXPECT_EQ(all_of<Line>(switch_disconnector(axis, pen_new())).size(), 4u);
    EXPECT_EQ(all_of<Line>(circuit_breaker(axis, pen_new())).size(), 5u);
}

TEST(Contact, LiesAcrossTheSheetAsItStands) {
    const Box upright = box_of(circuit_breaker({{0, 0}, {0, 1}}, pen_new()));
    const Box lying = box_of(circuit_breaker({{0, 0}, {1, 0}}, pen_new()));
    EXPECT_NEAR(upright.height(), lying.width(), 1e-9);
    EXPECT_NEAR(upright.width(), lying.height(), 1e-9);
    // The blade opens to the left of a line down, below a line to the right.
    EXPECT_NEAR(upright.left, -lying.bottom, 1e-9);
}

}  // namespace
}  // namespace toft::symbol
