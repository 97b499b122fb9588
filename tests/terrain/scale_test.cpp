#include "terrain/scale.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace toft::terrain {
namespace {

TEST(Scale, IsEvenOrByDecades) {
    const Scale even{0, 10, 100, 200, false};
    EXPECT_DOUBLE_EQ(even.at(2.5), 125);
    const Scale decades{1, 100, 300, 100, true};
    EXPECT_DOUBLE_EQ(decades.at(10), 200);
}

TEST(Scale, WhatLiesBeyondCountsAsItsEnd) {
    const Scale scale{1, 100, 0, 50, true};
    EXPECT_EQ(scale.at(0), 0);
    EXPECT_EQ(scale.at(-3), 0);
    EXPECT_EQ(scale.at(std::numeric_limits<double>::infinity()), 50);
    EXPECT_EQ(scale.at(std::numeric_limits<double>::quiet_NaN()), 0);
    const Scale empty{4, 4, 7, 9, false};
    EXPECT_EQ(empty.at(4), 7);
}

TEST(Scale, EvenStepsAreRound) {
    EXPECT_EQ(even_steps({0, 6.3, 0, 1}, 9), (std::vector<double>{0, 1, 2, 3, 4, 5, 6}));
    EXPECT_EQ(even_steps({0, 230, 0, 1}, 6), (std::vector<double>{0, 50, 100, 150, 200}));
    EXPECT_TRUE(even_steps({3, 3, 0, 1}, 6).empty());
}

TEST(Scale, DecadeStepsAreOneTwoAndFive) {
    EXPECT_EQ(decade_steps({5, 200, 0, 1, true}), (std::vector<double>{5, 10, 20, 50, 100, 200}));
    EXPECT_TRUE(decade_steps({0, 200, 0, 1, true}).empty());
}

RC_GTEST_PROP(Scale, EvenStepsStayOnTheScaleAndAreNoMoreThanAsked, ()) {
    const double low = *rc::gen::inRange(-500, 500) / 7.0;
    const double span = *rc::gen::inRange(1, 100000) / 13.0;
    const auto most = static_cast<std::size_t>(*rc::gen::inRange(2, 12));
    const Scale scale{low, low + span, 0, 1};
    const std::vector<double> steps = even_steps(scale, most);
    RC_ASSERT(steps.size() <= most);
    for (const double step : steps) {
        RC_ASSERT(step >= scale.low - 1e-6 * span && step <= scale.high + 1e-6 * span);
    }
}

RC_GTEST_PROP(Scale, RoundedFiguresHoldTheFigureBetweenThem, ()) {
    const double figure = std::pow(10.0, *rc::gen::inRange(-40, 60) / 10.0);
    RC_ASSERT(rounded_down(figure) <= figure * (1 + 1e-9));
    RC_ASSERT(rounded_up(figure) >= figure * (1 - 1e-9));
    RC_ASSERT(rounded_up(figure) <= 2.5 * rounded_down(figure) * (1 + 1e-9));
}

TEST(Scale, WhatHasNoDecadeRoundsToOne) {
    for (const double odd : {0.0, -3.0, std::numeric_limits<double>::infinity(),
                             std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_EQ(rounded_up(odd), 1);
        EXPECT_EQ(rounded_down(odd), 1);
    }
}

}  // namespace
}  // namespace toft::terrain
