#include "curves/marks.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

answer::RunAnswer run_of(double ib, double in, double iz) {
    answer::RunAnswer run;
    run.figures.design_current_a = ib;
    run.figures.rating_a = iz;
    run.device.rating_a = in;
    return run;
}

TEST(Marks, CurrentsCloseTogetherKeepTheirFiguresApart) {
    for (const auto& run : {run_of(24, 25, 26), run_of(25, 25, 25), run_of(40, 32, 20)}) {
        const drawing::Items items = current_marks(plain_paper(), run);
        EXPECT_EQ(picture::clashes(items, {100, 200 - mark_room, 900, 199}), "");
        EXPECT_EQ(picture::texts_in(items).size(), 3u);
    }
    EXPECT_TRUE(picture::says(current_marks(plain_paper(), run_of(24, 25, 26)), "Iz 26 A"));
}

TEST(Marks, TheTimeAllowedIsThatOfTheSystem) {
    const auto& limits = support::catalogue().limits;
    const auto& tn = picture::example("demo").job;
    const auto& tt = picture::example("tt-shed").job;
    EXPECT_EQ(time_allowed(support::catalogue(), tn), limits.disconnection_tn.value.number());
    EXPECT_EQ(time_allowed(support::catalogue(), tt), limits.disconnection_tt.value.number());
    EXPECT_LT(time_allowed(support::catalogue(), tt), time_allowed(support::catalogue(), tn));
}

TEST(Marks, AResidualCurrentDeviceIsShownWhereOneStands) {
    const auto& tt = picture::example("tt-shed").answer.schemes.front();
    ASSERT_TRUE(study::residual_at_head(tt.scheme));
    EXPECT_TRUE(picture::says(time_marks(plain_paper(), tt.scheme, 1), "RCD at the head"));
    const auto& tn = picture::example("demo").answer.schemes.front();
    ASSERT_FALSE(study::residual_at_head(tn.scheme));
    const drawing::Items items = time_marks(plain_paper(), tn.scheme, 5);
    EXPECT_FALSE(picture::says(items, "RCD"));
    EXPECT_TRUE(picture::says(items, "earth fault off within 5 s"));
}

TEST(Marks, ARingStandsOnlyWhereTheDeviceOperates) {
    answer::FigureAnswers figures;
    figures.earth_fault_current_far_a = 400;
    figures.near_line_neutral_a = {900, 1200};
    figures.near_three_lines_a = 2500;
    EXPECT_EQ(largest_fault(figures), 2500);
    EXPECT_EQ(picture::count_kind(fault_marks(plain_paper(), figures), "operates"), 0);
    figures.disconnection_s = 0.3;
    const drawing::Items items = fault_marks(plain_paper(), figures);
    const drawing::Group* ring = picture::find_kind(items, "operates");
    ASSERT_NE(ring, nullptr);
    EXPECT_EQ(std::get<drawing::Circle>(ring->items.front().shape).centre,
              plain_paper().at(400, 0.3));
}

}  // namespace
}  // namespace toft::curves
