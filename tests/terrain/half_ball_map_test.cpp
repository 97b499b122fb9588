#include "terrain/half_ball_map.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

const answer::GroundSideAnswer side = looked_at_ground().sides[0];

TEST(HalfBallMap, FallsWithTheDistance) {
    const SurfaceMap map = half_ball_map(looked_at_job(), side);
    ASSERT_TRUE(drawable(map.grid));
    EXPECT_NEAR(share_at(map.grid, {3.6, 0}), 0.5, 0.01);
    EXPECT_NEAR(share_at(map.grid, {0, 0}), 1, 1e-9);
}

TEST(HalfBallMap, EachLineLiesAtItsLevel) {
    const SurfaceMap map = half_ball_map(looked_at_job(), side);
    EXPECT_GE(map.contours.size(), 5u);
    for (const ContourLine& contour : map.contours) {
        for (const auto& line : contour.lines) {
            for (const GroundPoint p : line) {
                EXPECT_NEAR(1.8 / std::hypot(p.east_m, p.north_m), contour.level,
                            0.01 * contour.level);
            }
        }
    }
}

TEST(HalfBallMap, TheElectrodeStandsWhereTheSurveyPutsTheOutbuilding) {
    const SurfaceMap map = half_ball_map(looked_at_job(), side);
    const GroundPoint electrode = map.things.back().outline.front();
    EXPECT_NEAR(std::hypot(electrode.east_m, electrode.north_m), 1.8 + 21, 1e-9);
    EXPECT_NEAR(electrode.north_m / electrode.east_m, 9.0 / 22, 1e-9);
    site::Job job = looked_at_job();
    job.buildings[1].at_x_m.reset();
    EXPECT_EQ(half_ball_map(job, side).things.back().outline.front(), (GroundPoint{1.8 + 21, 0}));
}

TEST(HalfBallMap, WithoutARadiusOrDistanceThereIsNoMap) {
    for (const double odd : {0.0, -1.0, no_end, no_number}) {
        answer::GroundSideAnswer other = side;
        other.separation.house_radius_m = odd;
        EXPECT_FALSE(drawable(half_ball_map(looked_at_job(), other).grid));
        if (odd == 0) continue;
        other = side;
        other.separation.distance_m = odd;
        EXPECT_FALSE(drawable(half_ball_map(looked_at_job(), other).grid));
    }
}

}  // namespace
}  // namespace toft::terrain
