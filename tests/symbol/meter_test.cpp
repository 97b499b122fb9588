#include "symbol/meter.h"

#include "drawing/measure.h"
#include "symbol/shapes.h"

#include <gtest/gtest.h>

namespace toft::symbol {
namespace {

TEST(Meter, LettersAreShapesInsideTheBox) {
    const Items items = energy_meter({{0, 0}, {0, 1}}, pen_existing());
    EXPECT_TRUE(all_of<Text>(items).empty());
    ASSERT_EQ(all_of<Rect>(items).size(), 1u);
    const Box box = all_of<Rect>(items)[0].box;
    ASSERT_EQ(all_of<Path>(items).size(), 1u);
    EXPECT_TRUE(contains(box, box_of(Item(all_of<Path>(items)[0]))));
    for (const Polyline& letter : all_of<Polyline>(items)) {
        EXPECT_TRUE(contains(box, box_of(Item(letter))));
    }
}

TEST(Meter, TheSourceIsARingWithAWaveInIt) {
    const Items items = alternating_source({{0, 0}, {0, 1}}, pen_existing());
    ASSERT_EQ(all_of<Circle>(items).size(), 1u);
    ASSERT_EQ(all_of<Path>(items).size(), 1u);
    EXPECT_TRUE(
        contains(box_of(Item(all_of<Circle>(items)[0])), box_of(Item(all_of<Path>(items)[0]))));
}

}  // namespace
}  // namespace toft::symbol
