#include "drawing/dimension.h"

#include "drawing/measure.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace toft::drawing {
namespace {

Text figure_in(const Items& items) { return std::get<Text>(items.back().shape); }

TEST(Dimension, OfALevelLengthStandsAboveItWithItsFigureInTheMiddle) {
    const Items items = dimension({.from = {0, 100}, .to = {200, 100}, .figure = "12.5 m"});
    ASSERT_EQ(items.size(), 6u);  // two extension lines, the line, two ticks, the figure
    const Line& line = std::get<Line>(items[2].shape);
    EXPECT_DOUBLE_EQ(line.from.y, 82);
    EXPECT_DOUBLE_EQ(line.to.y, 82);
    const Text figure = figure_in(items);
    EXPECT_EQ(figure.spans, plain("12.5 m"));
    EXPECT_DOUBLE_EQ(figure.at.x, 100);
    EXPECT_LT(figure.at.y, 82);
    EXPECT_EQ(figure.style.turn, 0);
    EXPECT_EQ(figure.style.anchor, Anchor::middle);
}

TEST(Dimension, EndsInObliqueStrokesCentredOnTheLine) {
    const Items items = dimension({.from = {0, 100}, .to = {200, 100}, .figure = "12.5 m"});
    for (const std::size_t i : {3u, 4u}) {
        const Line& tick = std::get<Line>(items[i].shape);
        EXPECT_NEAR(between(tick.from, tick.to, 0.5).y, 82, 1e-9);
        EXPECT_NEAR(between(tick.from, tick.to, 0.5).x, i == 3 ? 0 : 200, 1e-9);
        EXPECT_NEAR(tick.to.x - tick.from.x, tick.from.y - tick.to.y, 1e-9);
    }
}

TEST(Dimension, StandsOnTheOtherSideForANegativeOffset) {
    const Items items =
        dimension({.from = {0, 0}, .to = {200, 0}, .figure = "12.5 m", .offset = -30});
    EXPECT_DOUBLE_EQ(std::get<Line>(items[2].shape).from.y, 30);
    const Line& extension = std::get<Line>(items[0].shape);
    EXPECT_GT(extension.from.y, 0);
    EXPECT_GT(extension.to.y, 30);
}

TEST(Dimension, PutsAWideFigureBeyondTheEnd) {
    for (const double to : {5.0, -5.0}) {
        const Items items = dimension({.from = {0, 0}, .to = {to, 0}, .figure = "300 mm"});
        EXPECT_GT(box_of(items.back()).left, std::max(0.0, to));
    }
}

TEST(Dimension, OfNoLengthIsTheFigureAlone) {
    EXPECT_EQ(dimension({.from = {1, 1}, .to = {1, 1}, .figure = "0 m"}).size(), 1u);
}

RC_GTEST_PROP(Dimension, FigureNeverStandsOnItsHead, ()) {
    const double x = *rc::gen::inRange(-100, 100);
    const double y = *rc::gen::inRange(-100, 100);
    const double turn = figure_in(dimension({.to = {x, y}, .figure = "1 m"})).style.turn;
    RC_ASSERT(turn >= -90 - 1e-9);
    RC_ASSERT(turn < 90);
}

}  // namespace
}  // namespace toft::drawing
