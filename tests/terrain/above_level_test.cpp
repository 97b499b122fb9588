#include "terrain/above_level.h"

#include "terrain/looking.h"

#include "base/pi.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::terrain {
namespace {

constexpr std::size_t grid_side = 41;

/// A cone with its top at `top`, 20 by 20 m from the origin, falling to 0 at 10 m.
SurfaceGrid cone(GroundPoint top) {
    SurfaceGrid grid{{0, 0}, 0.5, 0.5, grid_side, grid_side, {}};
    for (std::size_t row = 0; row < grid_side; ++row) {
        for (std::size_t column = 0; column < grid_side; ++column) {
            const double x = 0.5 * static_cast<double>(column) - top.east_m;
            const double y = 0.5 * static_cast<double>(row) - top.north_m;
            grid.share.push_back(1 - std::hypot(x, y) / 10);
        }
    }
    return grid;
}

double area_of(const std::vector<std::vector<GroundPoint>>& outlines) {
    double twice = 0;
    for (const auto& outline : outlines) {
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const GroundPoint a = outline[i];
            const GroundPoint b = outline[(i + 1) % outline.size()];
            twice += a.east_m * b.north_m - b.east_m * a.north_m;
        }
    }
    return twice / 2;
}

/// The level line of a cone as a circle, open where the grid ends: half of it at an edge.
ContourLine circle(GroundPoint middle, double radius, double from, double to, double level) {
    std::vector<GroundPoint> line;
    for (int i = 0; i <= 200; ++i) {
        const double angle = from + (to - from) * i / 200;
        line.push_back(
            {middle.east_m + radius * std::cos(angle), middle.north_m + radius * std::sin(angle)});
    }
    if (to - from > 6) line.back() = line.front();
    return {level, {std::move(line)}};
}

TEST(AboveLevel, AClosedLineHoldsItsHighGround) {
    const auto outlines = above_level(cone({10, 10}), circle({10, 10}, 5, 0, 2 * pi, 0.5));
    EXPECT_NEAR(area_of(outlines), 25 * pi, 0.1);
}

TEST(AboveLevel, AnOpenLineIsClosedAlongTheEdge) {
    const SurfaceGrid grid = cone({0, 10});
    ContourLine half = circle({0, 10}, 5, -pi / 2, pi / 2, 0.5);
    half.lines[0].front() = {0, 5};
    half.lines[0].back() = {0, 15};
    EXPECT_NEAR(area_of(above_level(grid, half)), 25 * pi / 2, 0.1);
}

TEST(AboveLevel, ALineRoundACornerTakesTheCornerIn) {
    const SurfaceGrid grid = cone({0, 0});
    ContourLine quarter = circle({0, 0}, 5, 0, pi / 2, 0.5);
    quarter.lines[0].front() = {5, 0};
    quarter.lines[0].back() = {0, 5};
    EXPECT_NEAR(area_of(above_level(grid, quarter)), 25 * pi / 4, 0.1);
}

TEST(AboveLevel, AHoleIsTakenOut) {
    SurfaceGrid grid = cone({10, 10});
    for (double& share : grid.share) share = 1 - share;
    const auto outlines = above_level(grid, circle({10, 10}, 5, 0, 2 * pi, 0.5));
    EXPECT_NEAR(area_of(outlines), 400 - 25 * pi, 0.1);
}

TEST(AboveLevel, WithoutALineTheMapIsWhollyAboveOrBelow) {
    EXPECT_NEAR(area_of(above_level(cone({10, 10}), {-2, {}})), 400, 1e-9);
    EXPECT_TRUE(above_level(cone({10, 10}), {2, {}}).empty());
}

RC_GTEST_PROP(AboveLevel, ALineAcrossSplitsTheMapWhicheverWayItRuns, ()) {
    SurfaceGrid grid = cone({10, 10});
    const double slope = *rc::gen::inRange(-4, 5) / 10.0;
    const double west = 10 - 10 * slope;
    for (std::size_t i = 0; i < grid.share.size(); ++i) {
        const double x = 0.5 * static_cast<double>(i % grid_side);
        const double y = 0.5 * static_cast<double>(i / grid_side);
        grid.share[i] = y - (west + slope * x);
    }
    std::vector<GroundPoint> line{{0, west}, {10, 10}, {20, west + 20 * slope}};
    if (*rc::gen::arbitrary<bool>()) std::reverse(line.begin(), line.end());
    RC_ASSERT(std::fabs(area_of(above_level(grid, {0, {line}})) - 200) < 1e-6);
}

}  // namespace
}  // namespace toft::terrain
