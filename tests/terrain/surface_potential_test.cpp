#include "terrain/surface_potential.h"

#include "terrain/half_ball_map.h"
#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

TEST(SurfacePotential, SaysWhatReachesTheElectrode) {
    const drawing::Scene scene =
        surface_potential_picture(looked_at_job(), looked_at_ground(), 0, 794);
    for (const char* words : {"at the outbuilding's electrode by 5.2 to 9.4 % of it",
                              "metal joins the two here", "11 % of a rise of 230 V", "50 V",
                              "half ball of 1.8 m radius", "nearest metal on the house's earth"}) {
        EXPECT_TRUE(tells(scene, words)) << words;
    }
}

TEST(SurfacePotential, NoWordsCoverOthersAtAnyWidth) {
    for (const double width : looked_at_widths()) {
        const drawing::Scene scene =
            surface_potential_picture(looked_at_job(), looked_at_ground(), 0, width);
        EXPECT_EQ(clashes_of(scene), "") << width;
        EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
    }
}

TEST(SurfacePotential, WithoutAMapItSaysThatNothingIsKnown) {
    answer::GroundAnswer ground = looked_at_ground();
    ground.sides[0].separation.house_radius_m = no_number;
    const drawing::Scene scene = surface_potential_picture(looked_at_job(), ground, 0, 794);
    EXPECT_TRUE(tells(scene, "is not known"));
    EXPECT_EQ(picture::count_kind(scene.items, "contour"), 0);
}

TEST(SurfacePotential, OddDistancesAndNamesStillGiveASheet) {
    for (const double away : {0.01, 0.5, 3.0, 200.0}) {
        for (const double radius : {0.05, 1.8, 30.0}) {
            answer::GroundAnswer ground = looked_at_ground();
            ground.sides[0].separation.distance_m = away;
            ground.sides[0].separation.house_radius_m = radius;
            ground.sides[0].separation.needed_m = no_end;
            site::Job job = looked_at_job();
            job.buildings[1].name = picture::hostile_name();
            for (const double width : {320.0, 794.0, 1400.0}) {
                const drawing::Scene scene = surface_potential_picture(job, ground, 0, width);
                EXPECT_EQ(clashes_of(scene), "") << away << " " << radius << " " << width;
                const std::string svg = drawing::to_svg(scene);
                EXPECT_EQ(svg.find("is missing"), std::string::npos) << away << " " << radius;
                EXPECT_EQ(svg.find("<script"), std::string::npos);
            }
        }
    }
}

}  // namespace
}  // namespace toft::terrain
