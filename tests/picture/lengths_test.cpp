#include "picture/lengths.h"

#include "picture/looking.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

Sketch chain_of(const site::Job& job) {
    Sketch sketch;
    draw_lengths(set_stage(job, nullptr), 684, sketch);
    return sketch;
}

const drawing::Box sheet{0, 0, sheet_wide, sheet_high};

TEST(Lengths, EveryLegHasItsFigureAndWords) {
    const Sketch sketch = chain_of(example("demo").job);
    EXPECT_EQ(count_kind(sketch.items, "leg-length"), 3);
    for (const char* words : {"7 m", "21 m", "2 m", "clipped", "buried direct under"}) {
        EXPECT_TRUE(says(sketch.items, words)) << words;
    }
}

TEST(Lengths, FiguresOfShortLegsDoNotCoverOneAnother) {
    std::vector<site::Leg> legs;
    for (int i = 0; i < 9; ++i) {
        legs.push_back(support::plain_leg(site::LegMethod::in_trunking, i % 2 ? 1 : 12));
    }
    EXPECT_EQ(clashes(chain_of(support::job_with_legs(legs)).items, sheet), "");
}

TEST(Lengths, LegsWithoutRoomForWordsAreCounted) {
    const std::vector<site::Leg> legs(50, support::plain_leg(site::LegMethod::clipped, 2));
    const Sketch sketch = chain_of(support::job_with_legs(legs));
    EXPECT_LT(count_kind(sketch.items, "leg-length"), 50);
    EXPECT_TRUE(says(sketch.items, "no room for the words of"));
    EXPECT_EQ(clashes(sketch.items, sheet), "");
}

std::string scales_of(const site::Job& job) {
    Sketch sketch;
    draw_scales(set_stage(job, nullptr), {44, 606, 228, 684}, sketch);
    EXPECT_EQ(clashes(sketch.items, drawing::Box{44, 600, 240, 690}), "");
    return words_in(sketch.items);
}

TEST(Lengths, TheScaleIsStated) {
    const std::string words = scales_of(example("demo").job);
    EXPECT_NE(words.find("depths drawn 4.9 times as large as"), std::string::npos);
    EXPECT_EQ(words.find("mm"), std::string::npos) << "paper changes the size of the picture";
    EXPECT_NE(words.find("the whole run 30 m"), std::string::npos);
    EXPECT_EQ(words.find("zigzag"), std::string::npos);
}

TEST(Lengths, TheScaleBarIsAsLongAsItSays) {
    const Stage stage = set_stage(example("demo").job, nullptr);
    Sketch sketch;
    draw_scales(stage, {44, 606, 228, 684}, sketch);
    const auto& bar = std::get<drawing::Rect>(sketch.items.front().shape);
    EXPECT_NEAR(bar.box.width(), 2 * stage.route.units_per_metre, 1e-6);
    EXPECT_TRUE(says(sketch.items, "2 m"));
}

TEST(Lengths, ABreakIsOwnedUpTo) {
    const site::Job job =
        support::job_with_legs({support::plain_leg(site::LegMethod::clipped, 1),
                                support::plain_leg(site::LegMethod::buried_direct, 900)});
    EXPECT_NE(scales_of(job).find("double zigzag: longer than drawn"), std::string::npos);
}

}  // namespace
}  // namespace toft::picture
