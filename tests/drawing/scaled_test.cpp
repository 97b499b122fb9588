#include "drawing/scaled.h"

#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Scaled, EveryShapeIsHalfAsLargeAndWordsAreLeftOut) {
    const Style pen = dashed(palette::ink, 4, {6, 2});
    const Path path = PathBuilder({10, 10})
                          .line({20, 10})
                          .quad({30, 10}, {30, 20})
                          .cubic({30, 30}, {20, 40}, {10, 40})
                          .arc(8, {10, 24})
                          .close()
                          .inked(pen);
    const Items items{Line{{2, 4}, {6, 8}, pen},
                      Polyline{{{0, 0}, {10, 20}}, pen},
                      Polygon{{{0, 0}, {10, 0}, {10, 30}}, pen},
                      Rect{{2, 2, 12, 22}, pen, 4},
                      Circle{{10, 20}, 6, pen},
                      path,
                      Group{{Line{{0, 0}, {100, 0}, pen}, text({0, 0}, "in")}, {20, 40}, "", "a"},
                      text({0, 0}, "out")};
    const Items half = scaled_without_words(items, 0.5);
    ASSERT_EQ(half.size(), items.size() - 1);
    for (std::size_t i = 0; i < half.size(); ++i) {
        const Box was = i == 6 ? Box{18, 38, 122, 42} : box_of(items[i]);
        const Box now = box_of(half[i]);
        EXPECT_NEAR(now.left, was.left / 2, 1e-9) << i;
        EXPECT_NEAR(now.top, was.top / 2, 1e-9) << i;
        EXPECT_NEAR(now.right, was.right / 2, 1e-9) << i;
        EXPECT_NEAR(now.bottom, was.bottom / 2, 1e-9) << i;
    }
    const auto& line = std::get<Line>(half[0].shape);
    EXPECT_EQ(line.style.width, 2);
    EXPECT_EQ(line.style.dash, (std::vector<double>{3, 1}));
    EXPECT_EQ(std::get<Group>(half[6].shape).items.size(), 1u);
    EXPECT_EQ(std::get<Group>(half[6].shape).kind, "a");
}

TEST(Scaled, WordsShrinkWithTheRestWhereTheyAreKept) {
    const Items items{Group{{text({10, 40}, "Zs 0.35", {.size = 14})}, {20, 40}},
                      text({0, 100}, "Ze", {.size = 8, .halo = palette::paper})};
    const Items half = scaled(items, 0.5);
    ASSERT_EQ(half.size(), 2u);
    const Box was = box_of(items);
    const Box now = box_of(half);
    EXPECT_NEAR(now.right, was.right / 2, 1e-9);
    EXPECT_NEAR(now.bottom, was.bottom / 2, 1e-9);
    EXPECT_EQ(std::get<Text>(half[1].shape).style.size, 4);
}

TEST(Scaled, StrokesStayVisible) {
    const auto width_of = [](double width) {
        const Items items{Line{{0, 0}, {1, 1}, stroked(palette::ink, width)}};
        return std::get<Line>(scaled_without_words(items, 0.1).front().shape).style.width;
    };
    EXPECT_EQ(width_of(3), least_stroke);
    EXPECT_EQ(width_of(0.3), 0.3);
}

}  // namespace
}  // namespace toft::drawing
