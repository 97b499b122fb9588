#include "terrain/lost_neutral.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

drawing::Scene drawn(const answer::LostNeutralAnswer& fault, double width) {
    answer::GroundAnswer ground = looked_at_ground();
    ground.sides[0].lost_neutral = fault;
    return lost_neutral_picture(looked_at_job(), ground, 0, width);
}

TEST(LostNeutral, SaysTheVoltsOfEachWayAndWhatTheMarksBelongTo) {
    const drawing::Scene scene = drawn(looked_at_fault(), 794);
    for (const char* words :
         {"If the supply's neutral breaks with up to 5.2 kW on", "65 to 155 V", "carry it and add",
          "411.5.3", "722.411.4.1", "livestock", "None of them is a limit for this fault",
          "0.8 to 3.9 A through its own electrode", "No fuse, breaker or RCD is sure to end that",
          "4 to 21 Ω", "nobody measured it"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(LostNeutral, NeverSaysSafe) {
    for (const double width : looked_at_widths()) {
        const std::string svg = drawing::to_svg(drawn(looked_at_fault(), width));
        EXPECT_EQ(svg.find("safe"), std::string::npos);
        EXPECT_EQ(svg.find("Safe"), std::string::npos);
    }
}

TEST(LostNeutral, NoWordsCoverOthersAtAnyWidth) {
    for (const double width : looked_at_widths()) {
        const drawing::Scene scene = drawn(looked_at_fault(), width);
        EXPECT_EQ(clashes_of(scene), "") << width;
        EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
    }
}

TEST(LostNeutral, WhereItDoesNotApplyASentenceIsAll) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.applies = false;
    const drawing::Scene scene = drawn(fault, 794);
    EXPECT_TRUE(tells(scene, "This is not reckoned here"));
    EXPECT_EQ(picture::count_kind(scene.items, "way"), 0);
    EXPECT_EQ(picture::count_kind(scene.items, "body"), 0);
    EXPECT_FALSE(tells(scene, "70 V"));
}

std::vector<answer::LostNeutralAnswer> odd_faults() {
    std::vector<answer::LostNeutralAnswer> all(8, looked_at_fault());
    all[0].ways.clear();
    for (auto& way : all[1].ways) way.over_load = {{5200, way.low_v, way.high_v}};
    for (auto& way : all[2].ways) way.over_load.clear();
    all[3].load_w = 0;
    all[4].earth_high_ohm = no_end;
    all[4].load_w = no_number;
    all[4].ways[0].high_v = no_end;
    all[5].marks_v = {49, 50, 51, -3, no_number};
    for (auto& way : all[6].ways) {
        way.way = picture::hostile_name();
        way.says = picture::hostile_name();
    }
    all[7].ways.insert(all[7].ways.end(), 6, looked_at_fault().ways[1]);
    return all;
}

TEST(LostNeutral, OddFaultsStillGiveASheet) {
    const auto faults = odd_faults();
    for (std::size_t i = 0; i < faults.size(); ++i) {
        for (const double width : {320.0, 794.0, 1400.0}) {
            const drawing::Scene scene = drawn(faults[i], width);
            EXPECT_EQ(clashes_of(scene), "") << i << " " << width;
            const std::string svg = drawing::to_svg(scene);
            EXPECT_EQ(svg.find("is missing"), std::string::npos) << i << " " << width;
            EXPECT_EQ(svg.find("<script"), std::string::npos);
        }
    }
}

TEST(LostNeutral, AMarkNobodyKnowsBelongsToAnotherDuty) {
    EXPECT_NE(mark_words(50), mark_words(60));
    EXPECT_EQ(mark_words(60), "a figure of another duty");
}

TEST(LostNeutral, ASoilThatDriesIsSaid) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.ways[1].dries = true;
    EXPECT_TRUE(tells(drawn(fault, 1400), "dries the soil"));
}

}  // namespace
}  // namespace toft::terrain
