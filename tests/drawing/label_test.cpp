#include "drawing/label.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Haloed, ChangesNothingButTheHalo) {
    Text words = haloed(text({1, 2}, "rod"), palette::soil);
    EXPECT_EQ(words.style.halo, palette::soil);
    words.style.halo.reset();
    EXPECT_EQ(words, text({1, 2}, "rod"));
}

TEST(Leader, GoesFromTheNearestEdgeToADot) {
    const Items items = leader(Box{0, 0, 10, 10}, {30, 5});
    ASSERT_EQ(items.size(), 2u);
    const Line& line = std::get<Line>(items[0].shape);
    EXPECT_EQ(line.from, (Point{10, 5}));
    EXPECT_EQ(line.to, (Point{30, 5}));
    EXPECT_EQ(std::get<Circle>(items[1].shape).centre, (Point{30, 5}));
}

TEST(Leader, IsADotAloneWithinTheBox) {
    const Items items = leader(Box{0, 0, 10, 10}, {5, 5});
    ASSERT_EQ(items.size(), 1u);
    EXPECT_TRUE(std::holds_alternative<Circle>(items[0].shape));
}

}  // namespace
}  // namespace toft::drawing
