#include "symbol/machine.h"

#include "drawing/measure.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

const Axis down{{40, 100}, {0, 1}};
const Axis across{{40, 100}, {1, 0}};

TEST(Machine, LettersAndWavesAreShapes) {
    for (const auto draw : {motor, inverter, solar_generator, battery}) {
        EXPECT_TRUE(all_of<Text>(draw(down, pen_new())).empty());
    }
}

TEST(Machine, AMotorIsARingThatBeginsAtTheAxisWithItsLetterInside) {
    for (const Axis& axis : {down, across}) {
        const Items items = motor(axis, pen_new());
        ASSERT_EQ(all_of<Circle>(items).size(), 1u);
        const Circle ring = all_of<Circle>(items)[0];
        EXPECT_DOUBLE_EQ(distance(ring.centre, axis.at), ring.radius);
        ASSERT_EQ(all_of<Polyline>(items).size(), 1u);
        for (const Point p : all_of<Polyline>(items)[0].points) {
            EXPECT_LT(distance(p, ring.centre), ring.radius);
        }
    }
}

TEST(Machine, AnInverterIsPartedFromDirectToAlternating) {
    const Items items = inverter(across, pen_new());
    const Box box = all_of<Rect>(items)[0].box;
    EXPECT_DOUBLE_EQ(box.left, across.at.x);
    ASSERT_EQ(all_of<Path>(items).size(), 1u) << "one wave";
    EXPECT_LT(box_of_line(all_of<Path>(items)[0]).right, box.centre().x) << "where the axis enters";
    int level = 0;
    for (const Line& line : all_of<Line>(items)) {
        level += line.from.y == line.to.y && line.from.x > box.centre().x - 1;
    }
    EXPECT_EQ(level, 2) << "two strokes for direct current";
}

/// Lengths of the plates that lie across an axis down the sheet.
std::vector<double> plates(const Items& items) {
    std::vector<double> found;
    for (const Line& line : all_of<Line>(items)) {
        if (line.from.y == line.to.y) found.push_back(distance(line.from, line.to));
    }
    return found;
}

TEST(Machine, ACellIsALongPlateAndAShortOne) {
    const std::vector<double> one = plates(solar_generator(down, pen_new()));
    ASSERT_EQ(one.size(), 2u);
    EXPECT_GT(one[0], one[1]);
    const std::vector<double> two = plates(battery(down, pen_new()));
    ASSERT_EQ(two.size(), 4u);
    EXPECT_GT(two[2], two[3]);
}

TEST(Machine, LightStrikesTheSolarGeneratorAndNotTheBattery) {
    EXPECT_EQ(all_of<Polygon>(solar_generator(down, pen_new())).size(), 2u);
    EXPECT_TRUE(all_of<Polygon>(battery(down, pen_new())).empty());
    EXPECT_LE(box_of(solar_generator(down, pen_new())).right,
              down.at.x + machine_size / 2 + pen_new().width);
}

}  // namespace
}  // namespace toft::symbol
