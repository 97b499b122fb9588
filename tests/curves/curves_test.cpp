#include "curves/curves.h"

#include "curves/looking.h"
#include "picture/stage.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::curves {
namespace {

const drawing::Box sheet{0, 0, picture::sheet_wide, picture::sheet_high};

drawing::Scene drawn(const picture::Example& one, std::size_t index) {
    return curves_picture(support::catalogue(), one.job, one.answer, index);
}

TEST(Curves, SayWhatMatters) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = drawn(one, 0);
    for (const char* words :
         {"Potter's studio, Wrensnest, Ashlow Green", "Ib 17.8 A", "earth fault off within 5 s",
          "sure to hold", "sure to have operated", "earth fault, far end", "meets",
          "A competent, licensed person, the local code and the network operator decide."}) {
        EXPECT_TRUE(picture::says(scene.items, words)) << words;
    }
    EXPECT_EQ(picture::count_kind(scene.items, "operates"), 1);
}

TEST(Curves, NoWordsCoverOthersOnAnyExample) {
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            const drawing::Scene scene = drawn(one, i);
            EXPECT_EQ(picture::clashes(level(scene.items), sheet), "") << name << " " << i;
            EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
        }
    }
}

/// Points through the middle of a slanting text, close together.
std::vector<drawing::Point> through(const drawing::Text& text) {
    std::vector<drawing::Point> points;
    const double wide = drawing::text_width(text.spans, text.style);
    for (double along = 0; along <= wide; along += 3) {
        const drawing::Point middle{along, -0.35 * text.style.size};
        points.push_back(text.at + drawing::turned(middle, text.style.turn));
    }
    return points;
}

double nearest_points(const drawing::Text& a, const drawing::Text& b) {
    double nearest = 1e9;
    for (const drawing::Point p : through(a)) {
        for (const drawing::Point q : through(b)) {
            nearest = std::min(nearest, drawing::distance(p, q));
        }
    }
    return nearest;
}

TEST(Curves, NamesOfSlantingLinesKeepApart) {
    int pairs = 0;
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        for (std::size_t i = 0; i < one.answer.schemes.size(); ++i) {
            std::vector<drawing::Text> slanting;
            for (const drawing::Text& text : picture::texts_in(drawn(one, i).items)) {
                if (text.style.turn == 0) continue;
                for (const drawing::Text& other : slanting) {
                    EXPECT_GT(nearest_points(text, other), 10) << name << " " << i;
                    ++pairs;
                }
                slanting.push_back(text);
            }
        }
    }
    EXPECT_GT(pairs, 20);
}

TEST(Curves, SameInputSameBytes) {
    const picture::Example& one = picture::example("steel-container");
    EXPECT_EQ(drawing::to_svg(drawn(one, 0)), drawing::to_svg(drawn(one, 0)));
    EXPECT_NE(drawing::to_svg(drawn(one, 0)), drawing::to_svg(drawn(one, 1)));
}

TEST(Curves, WithoutASchemeTheReasonsStand) {
    const picture::Example& one = picture::example("caravan-no-scheme");
    const drawing::Scene scene = drawn(one, 0);
    EXPECT_TRUE(picture::says(scene.items, "No sound scheme"));
    EXPECT_EQ(picture::count_kind(scene.items, "reason"),
              static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(picture::count_kind(scene.items, "withstand"), 0);
}

TEST(Curves, HostileNamesAreHarmless) {
    picture::Example one = picture::example("demo");
    one.job.title = one.answer.job = picture::hostile_name();
    const drawing::Scene scene = drawn(one, 0);
    EXPECT_EQ(drawing::to_svg(scene).find("<script"), std::string::npos);
    EXPECT_EQ(picture::clashes(level(scene.items), sheet), "");
}

}  // namespace
}  // namespace toft::curves
