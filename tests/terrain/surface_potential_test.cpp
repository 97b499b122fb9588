#include "terrain/surface_potential.h"

#include "field/electrode_shape.h"
#include "field/field.h"
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

/// Two rods in uniform soil, the house's raised to 1 V, potentials of the solved field.
SurfaceMap solved_map() {
    const auto at = [](double east, double north) {
        return field::Spot{metres(east), metres(north), metres(0)};
    };
    const auto solved =
        field::solve_field(field::uniform_soil(ohm_metres(80)),
                           {field::rod_wire(at(0, 0), metres(2.4), metres(0.008), 0),
                            field::rod_wire(at(9, 3), metres(2.4), metres(0.008), 1)});
    const field::Field& rods = *solved;
    const Amperes raised = volts(1) / rods.resistance(0, 0);
    SurfaceMap map;
    map.grid = {{-5, -5}, 0.5, 0.5, 41, 27, {}};
    for (std::size_t i = 0; i < 41 * 27; ++i) {
        const double x = -5 + 0.5 * static_cast<double>(i % 41);
        const double y = -5 + 0.5 * static_cast<double>(i / 41);
        map.grid.share.push_back(rods.potential(at(x, y), {raised, amperes(0)}).number());
    }
    map.things = {{ThingKind::house_electrode, {{0, 0}}, "the house's earth"},
                  {ThingKind::outbuilding_electrode, {{9, 3}}, "the outbuilding's electrode"}};
    return map;
}

TEST(SurfacePotential, DrawsASolvedFieldToo) {
    const SurfaceMap map = solved_map();
    ASSERT_TRUE(drawable(map.grid));
    EXPECT_GT(share_at(map.grid, {0, 0}), share_at(map.grid, {4, 0}));
    const drawing::Scene scene =
        surface_potential_picture(looked_at_job(), looked_at_ground(), 0, map, 794);
    EXPECT_EQ(clashes_of(scene), "");
    EXPECT_EQ(picture::count_kind(scene.items, "electrode"), 2);
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
