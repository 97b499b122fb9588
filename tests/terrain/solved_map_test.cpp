#include "terrain/solved_map.h"

#include "field/electrode_shape.h"
#include "field/field.h"
#include "terrain/above_level.h"
#include "terrain/looking.h"
#include "terrain/surface_potential.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

field::Spot at(double east, double north) { return {metres(east), metres(north), metres(0)}; }

/// Two rods in uniform soil, current into the first alone.
field::Field two_rods() {
    return *field::solve_field(field::uniform_soil(ohm_metres(80)),
                               {field::rod_wire(at(0, 0), metres(2.4), metres(0.008), 0),
                                field::rod_wire(at(9, 3), metres(2.4), metres(0.008), 1)});
}

struct Solved {
    field::Field rods = two_rods();
    Volts rise = volts(230);
    field::Driven driven = rods.driven({rise / rods.resistance(0, 0), amperes(0)});
    field::SurfaceMap surface =
        *field::map_surface(driven, {at(-5, -5), metres(20), metres(13), 81, 53});
};

TEST(SolvedMap, SharesAreThoseOfTheField) {
    const Solved solved;
    const SurfaceMap map = solved_map(solved.surface, solved.rise, {0.1, 0.2});
    ASSERT_TRUE(drawable(map.grid));
    for (const GroundPoint p : {GroundPoint{3, 2}, GroundPoint{-4, 6}, GroundPoint{14, -3}}) {
        const double share = solved.driven.potential(at(p.east_m, p.north_m)) / solved.rise;
        EXPECT_NEAR(share_at(map.grid, p), share, 0.01 * share);
    }
}

TEST(SolvedMap, LinesLieAtTheirLevelAndHoldTheHigherGround) {
    const Solved solved;
    const SurfaceMap map = solved_map(solved.surface, solved.rise, {0.05, 0.1, 0.2, 1.5});
    ASSERT_EQ(map.contours.size(), 3u) << "no ground rises farther than the rod";
    for (const ContourLine& contour : map.contours) {
        for (const auto& line : contour.lines) {
            for (const GroundPoint p : line) {
                EXPECT_NEAR(share_at(map.grid, p), contour.level, 0.02 * contour.level);
            }
        }
        EXPECT_FALSE(above_level(map.grid, contour).empty());
    }
}

TEST(SolvedMap, IsDrawnLikeAnyOther) {
    const Solved solved;
    const site::Job job = looked_at_job();
    SurfaceMap map = solved_map(solved.surface, solved.rise, map_levels(job, looked_at_fault()));
    map.things = {{ThingKind::house_electrode, {{0, 0}}, "the house's rod"}};
    for (const double width : {320.0, 794.0, 1400.0}) {
        const drawing::Scene scene =
            surface_potential_picture(job, looked_at_ground(), 0, map, width);
        EXPECT_EQ(clashes_of(scene), "") << width;
        EXPECT_EQ(picture::count_kind(scene.items, "contour"),
                  static_cast<int>(map.contours.size()));
        EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
    }
}

TEST(SolvedMap, WithoutARiseThereIsNoMap) {
    const Solved solved;
    EXPECT_FALSE(drawable(solved_map(solved.surface, volts(0), {0.1}).grid));
}

}  // namespace
}  // namespace toft::terrain
