#include "curves/narrow.h"

#include "curves/curves.h"
#include "curves/looking.h"
#include "curves/withstand.h"
#include "parts/word_column.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

drawing::Scene drawn(const picture::Example& one, std::size_t index, double width) {
    return curves_picture(support::catalogue(), one.job, one.answer, index, width);
}

TEST(NarrowCurves, TheLegendStandsBelowThePaper) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = drawn(one, 0, 360);
    EXPECT_EQ(scene.width, 360);
    EXPECT_GT(scene.height, 900);
    double foot = 0;
    double legend = 0;
    for (const drawing::Text& text : picture::texts_in(scene.items)) {
        if (picture::line_of(text) == "0.01 s") foot = text.at.y;
        if (picture::line_of(text) == "the device") legend = text.at.y;
    }
    EXPECT_GT(foot, 0);
    EXPECT_GT(legend, foot);
    EXPECT_EQ(picture::count_kind(scene.items, "operates"), 1);
    EXPECT_EQ(picture::count_kind(scene.items, "range"), 4);
}

TEST(NarrowCurves, NoWordsCoverOthersOnAnyExample) {
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            for (const double width : {320.0, 360.0, 794.0, 1100.0}) {
                const drawing::Scene scene = drawn(one, i, width);
                EXPECT_EQ(picture::clashes(level(scene.items), {0, 0, scene.width, scene.height}),
                          "")
                    << name << " " << i << " " << width;
                EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
            }
        }
    }
}

TEST(NarrowCurves, EachLetterStandsAtItsLineAndInTheLegend) {
    const picture::Example& one = picture::example("demo");
    const auto lines = withstands(support::catalogue(), one.answer.schemes[0].scheme);
    ASSERT_GE(lines.size(), 2u);
    const drawing::Scene scene = drawn(one, 0, 360);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        int count = 0;
        for (const drawing::Text& text : picture::texts_in(scene.items)) {
            count += picture::line_of(text) == line_letter(i);
        }
        EXPECT_EQ(count, 2) << line_letter(i);
    }
}

TEST(NarrowCurves, PaperIsAsBefore) {
    const picture::Example& one = picture::example("demo");
    EXPECT_EQ(drawing::to_svg(drawn(one, 0, paper_wide)),
              drawing::to_svg(curves_picture(support::catalogue(), one.job, one.answer, 0)));
    EXPECT_EQ(drawn(one, 0, 10).width, parts::narrowest_sheet);
}

TEST(NarrowCurves, WithoutASchemeTheReasonsStand) {
    const picture::Example& one = picture::example("caravan-no-scheme");
    const drawing::Scene scene = drawn(one, 0, 360);
    EXPECT_EQ(picture::count_kind(scene.items, "reason"),
              static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(picture::count_kind(scene.items, "withstand"), 0);
}

}  // namespace
}  // namespace toft::curves
