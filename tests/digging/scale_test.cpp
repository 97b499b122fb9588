#include "digging/scale.h"

#include "digging/measured.h"
#include "picture/looking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::digging {
namespace {

TEST(Scale, TheLargestThatFitsIsTaken) {
    const double wide = drawing::units_of_mm(128);
    EXPECT_EQ(fitting(plan_scales(), {22, 9, wide, wide}), 200);  // 110 mm
    EXPECT_EQ(fitting(plan_scales(), {30, 0, wide, wide}), 250);  // 120 mm
    EXPECT_EQ(fitting(plan_scales(), {9, 30, wide, wide}), 250);  // by its height
    EXPECT_EQ(fitting(plan_scales(), {0, 0, wide, wide}), 50);
    EXPECT_EQ(fitting(plan_scales(), {20000, 0, wide, wide}), 250000);
}

RC_GTEST_PROP(Scale, WhatIsTakenFitsAndTheNextLargerDoesNot, ()) {
    const Fit fit{*rc::gen::inRange(1, 900) * 1.0, *rc::gen::inRange(1, 900) * 1.0, 450, 600};
    const double one_to = fitting(plan_scales(), fit);
    const auto fits = [&](double scale) {
        const double k = units_a_metre(scale);
        return fit.wide_m * k <= fit.wide && fit.high_m * k <= fit.high;
    };
    RC_ASSERT(fits(one_to));
    const auto at = std::find(plan_scales().begin(), plan_scales().end(), one_to);
    if (at != plan_scales().begin() && at != plan_scales().end()) RC_ASSERT(!fits(*(at - 1)));
}

TEST(Scale, TheBarIsAsLongAsItSays) {
    for (const double one_to : {5.0, 10.0, 50.0, 200.0, 250.0, 1250.0, 25000.0}) {
        const drawing::Items bar = scale_bar(one_to, {10, 10}, 240);
        double left = 1e9;
        double right = 0;
        for (const drawing::Item& item : bar) {
            if (const auto* rect = std::get_if<drawing::Rect>(&item.shape)) {
                left = std::min(left, rect->box.left);
                right = std::max(right, rect->box.right);
            }
        }
        const std::string last = picture::line_of(picture::texts_in(bar).back());
        EXPECT_NEAR((right - left) / units_a_metre(one_to), std::strtod(last.c_str(), nullptr),
                    1e-9);
        EXPECT_LE(right - left, 240 + 1e-9);
        EXPECT_GT(right - left, 90);
        EXPECT_EQ(picture::clashes(bar, {0, 0, 300, 10 + bar_high + 4}), "");
    }
}

TEST(Scale, AScaleIsTrueOnlyAtTheSizeThatItNames) {
    EXPECT_EQ(scale_words(200, drawing::units_of_mm(176), true),
              "Scale 1:200 where this sheet is printed 176 mm wide; at any other size go by the "
              "bar.");
    EXPECT_EQ(scale_words(1250, 0, false), "Scale 1:1250 on A4; at any other size go by the bar.");
}

}  // namespace
}  // namespace toft::digging
