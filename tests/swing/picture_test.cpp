#include "swing/picture.h"

#include "drawing/svg.h"
#include "looking.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::swing {
namespace {

TEST(TolerancePicture, NoWordsCoverOthersAtAnyWidth) {
    const site::Job job = terrain::looked_at_job();
    for (const std::size_t figures : {0u, 1u, 6u, 40u}) {
        for (const std::string& name : {std::string("length of leg"), picture::hostile_name()}) {
            const outlook::ToleranceAnswer made = made_up(figures, name);
            for (const double width : terrain::looked_at_widths()) {
                const auto scene = tolerance_picture(job, "studio", &made, width);
                EXPECT_EQ(clashes_of(scene), "") << figures << " " << width;
                EXPECT_EQ(scene.width, width);
                EXPECT_EQ(drawing::to_svg(scene).find("<script"), std::string::npos);
            }
        }
    }
}

TEST(TolerancePicture, SaysTheChanceAndHowItIsRead) {
    const site::Job job = terrain::looked_at_job();
    const outlook::ToleranceAnswer made = made_up(3);
    const auto scene = tolerance_picture(job, "studio", &made, 794);
    for (const char* words : {"66.7 %", "voltage-drop", "the figure at its low end",
                              "the figure at its high end", "Dashed line: the limit"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(TolerancePicture, OfARealSchemeItIsTheSameEachTime) {
    const picture::Example& one = picture::example("tt-shed");
    answer::Question question = support::question_of(one.job);
    tolerance::Wish wish;
    wish.samples = 2048;
    wish.pool = 64;
    wish.length = 60;
    const auto found = outlook::tolerances(question, one.answer.schemes[0].scheme, wish);
    const auto a = tolerance_picture(one.job, one.job.runs[0].to, &found, 360);
    const auto again = outlook::tolerances(question, one.answer.schemes[0].scheme, wish);
    const auto b = tolerance_picture(one.job, one.job.runs[0].to, &again, 360);
    EXPECT_EQ(drawing::to_svg(a), drawing::to_svg(b));
    EXPECT_TRUE(tells(a, "length of leg"));
}

TEST(TolerancePicture, WithoutASchemeItSaysSo) {
    const site::Job job = terrain::looked_at_job();
    EXPECT_TRUE(tells(tolerance_picture(job, "studio", nullptr, 794), "No scheme is sound"));
}

}  // namespace
}  // namespace toft::swing
