#include "terrain/rod_length.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

TEST(RodLength, SaysWhatTheElectrodeReadsAndWhatWouldDo) {
    const drawing::Scene scene = rod_length_picture(looked_at_job(), looked_at_ground(), 0, 794);
    for (const char* words :
         {"one rod, 2.4 m: 31 to 52 Ω through the year", "one rod, 1.8 m long: 88 Ω at worst, £41",
          "3 rods, 3.6 m long, 3.6 m apart: 18 Ω at worst", "No rods within the bounds",
          "at most 100 Ω: below that a reading is likely to stay steady", "180 Ωm",
          "worst of the year", "the rod is tested once it is in"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(RodLength, NoWordsCoverOthersAtAnyWidth) {
    for (const double width : looked_at_widths()) {
        const drawing::Scene scene =
            rod_length_picture(looked_at_job(), looked_at_ground(), 0, width);
        EXPECT_EQ(clashes_of(scene), "") << width;
        EXPECT_EQ(scene.width, width);
        EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
    }
}

/// Grounds that leave out, overdo or spoil one thing each.
std::vector<answer::GroundAnswer> odd_grounds() {
    std::vector<answer::GroundAnswer> all(8, looked_at_ground());
    all[0].sides[0].over_length = {{2.4, 40, 90}};
    all[1].sides[0].over_length.clear();
    all[2].soil.strata.clear();
    all[3].sides[0].over_length.back().high_ohm = no_end;
    all[4].sides[0].year = {no_number, no_end, "", ""};
    all[5].sides[0].targets.clear();
    for (answer::RodTargetAnswer& target : all[6].sides[0].targets) {
        target.target_ohm = 100.4;
        target.why = picture::hostile_name();
    }
    all[6].sides[0].electrode_words = picture::hostile_name();
    all[7].soil.strata.assign(7, {10, 20, 40, 0.1, 0.2, no_end});
    return all;
}

TEST(RodLength, OddGroundsStillGiveASheet) {
    const std::vector<answer::GroundAnswer> grounds = odd_grounds();
    for (std::size_t i = 0; i < grounds.size(); ++i) {
        for (const double width : {320.0, 794.0, 1400.0}) {
            const drawing::Scene scene = rod_length_picture(looked_at_job(), grounds[i], 0, width);
            EXPECT_EQ(clashes_of(scene), "") << i << " " << width;
            const std::string svg = drawing::to_svg(scene);
            EXPECT_EQ(svg.find("is missing"), std::string::npos) << i;
            EXPECT_EQ(svg.find("<script"), std::string::npos);
        }
    }
}

TEST(RodLength, WithoutLengthsItSaysThatNothingIsKnown) {
    answer::GroundAnswer ground = looked_at_ground();
    ground.sides[0].over_length.clear();
    const drawing::Scene scene = rod_length_picture(looked_at_job(), ground, 0, 794);
    EXPECT_TRUE(tells(scene, "is not known"));
    EXPECT_EQ(picture::count_kind(scene.items, "soil"), 0);
}

TEST(RodLength, ASideThatIsNotThereIsSaid) {
    const drawing::Scene scene = rod_length_picture(looked_at_job(), looked_at_ground(), 1, 794);
    EXPECT_TRUE(tells(scene, "The answer holds no such outbuilding."));
}

TEST(RodLength, SameInputSameBytes) {
    const auto drawn = [](double width) {
        return drawing::to_svg(rod_length_picture(looked_at_job(), looked_at_ground(), 0, width));
    };
    EXPECT_EQ(drawn(794), drawn(794));
    EXPECT_NE(drawn(794), drawn(795));
}

}  // namespace
}  // namespace toft::terrain
