#include "terrain/half_ball_map.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

const answer::GroundSideAnswer mapped_side = looked_at_ground().sides[0];

/// Beyond the nearest metal, which is 21 m from the electrode towards the house.
GroundPoint centre_of(double radius) {
    const double share = 1 - (21 + radius) / std::hypot(22, 9);
    return {22 * share, 9 * share};
}

double from(GroundPoint a, GroundPoint b) {
    return std::hypot(b.east_m - a.east_m, b.north_m - a.north_m);
}

TEST(HalfBallMap, FallsWithTheDistance) {
    const SurfaceMap map = half_ball_map(looked_at_job(), mapped_side);
    ASSERT_TRUE(drawable(map.grid));
    const GroundPoint centre = centre_of(1.8);
    EXPECT_NEAR(share_at(map.grid, {centre.east_m + 3.6, centre.north_m}), 0.5, 0.02);
    EXPECT_NEAR(share_at(map.grid, centre), 1, 1e-9);
    EXPECT_NEAR(share_at(map.grid, {22, 9}), 1.8 / (1.8 + 21), 0.002);
}

TEST(HalfBallMap, EachLineLiesAtItsLevel) {
    for (const double radius : {0.3, 1.8, 38.0, 3000.0}) {
        answer::GroundSideAnswer other = mapped_side;
        other.separation.house_radius_m = radius;
        const SurfaceMap map = half_ball_map(looked_at_job(), other);
        EXPECT_GE(map.contours.size(), 1u) << radius;
        for (const ContourLine& contour : map.contours) {
            for (const auto& line : contour.lines) {
                for (const GroundPoint p : line) {
                    EXPECT_NEAR(radius / from(centre_of(radius), p), contour.level,
                                0.01 * contour.level);
                }
            }
        }
    }
}

TEST(HalfBallMap, TheElectrodeStandsWhereTheSurveyPutsTheOutbuilding) {
    const SurfaceMap map = half_ball_map(looked_at_job(), mapped_side);
    const GroundPoint electrode = map.things[3].outline.front();
    EXPECT_EQ(electrode, (GroundPoint{22, 9}));
    EXPECT_NEAR(from(electrode, map.things[2].outline.front()), 21, 1e-9);
    site::Job job = looked_at_job();
    job.buildings[1].at_x_m.reset();
    const SurfaceMap east = half_ball_map(job, mapped_side);
    EXPECT_EQ(east.things[3].outline.front(), (GroundPoint{1.8 + 21, 0}));
    EXPECT_NEAR(east.things[2].outline.front().east_m, 1.8, 1e-9);
}

TEST(HalfBallMap, WithoutARadiusOrDistanceThereIsNoMap) {
    for (const double odd : {0.0, -1.0, no_end, no_number}) {
        answer::GroundSideAnswer other = mapped_side;
        other.separation.house_radius_m = odd;
        EXPECT_FALSE(drawable(half_ball_map(looked_at_job(), other).grid));
        if (odd == 0) continue;
        other = mapped_side;
        other.separation.distance_m = odd;
        EXPECT_FALSE(drawable(half_ball_map(looked_at_job(), other).grid));
    }
}

}  // namespace
}  // namespace toft::terrain
