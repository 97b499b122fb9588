#include "drawing/callout.h"

#include "drawing/measure.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

Callout intake(Point target) {
    return {.target = target, .lines = {plain("Intake"), symbol("Z", "e"), plain("100 A fuse")}};
}

std::vector<Text> texts_of(const Items& items) {
    std::vector<Text> texts;
    for (const Item& item : items) {
        if (const Text* text = std::get_if<Text>(&item.shape)) texts.push_back(*text);
    }
    return texts;
}

TEST(Callout, WordsStayInTheirBoxOnEitherSide) {
    for (const double x : {0.0, 400.0}) {
        const Callout callout = intake({x, 0});
        const Box box = moved(callout_box(callout), {100, 50});
        const std::vector<Text> texts = texts_of(callout_at(callout, box));
        ASSERT_EQ(texts.size(), 3u);
        EXPECT_EQ(texts[0].style.weight, Weight::bold);
        EXPECT_EQ(texts[1].style.weight, Weight::normal);
        for (Text text : texts) {
            text.style.halo.reset();
            EXPECT_TRUE(contains(grown(box, 0.5), box_of(text)));
        }
    }
}

TEST(Callout, LinesFollowOneAnotherDownwards) {
    const std::vector<Text> texts = texts_of(callout_at(intake({}), callout_box(intake({}))));
    EXPECT_NEAR(texts[1].at.y - texts[0].at.y, line_spacing * 11, 1e-9);
    EXPECT_NEAR(texts[2].at.y - texts[1].at.y, line_spacing * 11, 1e-9);
}

TEST(Callouts, AtOnePointDoNotCoverOneAnother) {
    const std::vector<Callout> callouts(5, intake({200, 150}));
    const std::vector<Text> texts = texts_of(callouts_in(callouts, {Box{0, 0, 400, 300}}));
    ASSERT_EQ(texts.size(), 15u);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        Text letters = texts[i];
        letters.style.halo.reset();
        for (std::size_t j = 0; j < texts.size(); ++j) {
            if (i / 3 == j / 3) continue;
            EXPECT_FALSE(overlap(box_of(letters), box_of(texts[j]))) << "halo over letters";
        }
    }
}

TEST(Callouts, EachHasALeaderThatEndsAtItsTarget) {
    const Items items = callouts_in({intake({50, 60}), intake({90, 60})}, {Box{0, 0, 400, 300}});
    std::vector<Point> dots;
    for (const Item& item : items) {
        if (const Circle* dot = std::get_if<Circle>(&item.shape)) dots.push_back(dot->centre);
    }
    EXPECT_EQ(dots, (std::vector<Point>{{50, 60}, {90, 60}}));
}

}  // namespace
}  // namespace toft::drawing
