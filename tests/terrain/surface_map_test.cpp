#include "terrain/surface_map.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::terrain {
namespace {

SurfaceGrid plane() {
    SurfaceGrid grid{{-1, 2}, 0.5, 0.5, 4, 3, {}};
    for (std::size_t row = 0; row < 3; ++row) {
        for (std::size_t column = 0; column < 4; ++column) {
            grid.share.push_back(0.1 * static_cast<double>(column) +
                                 0.05 * static_cast<double>(row));
        }
    }
    return grid;
}

RC_GTEST_PROP(SurfaceMap, APlaneIsReadExactlyBetweenItsFigures, ()) {
    const double x = *rc::gen::inRange(0, 1500) / 1000.0;
    const double y = *rc::gen::inRange(0, 1000) / 1000.0;
    const double expected = 0.1 * x / 0.5 + 0.05 * y / 0.5;
    RC_ASSERT(std::fabs(share_at(plane(), {-1 + x, 2 + y}) - expected) < 1e-12);
}

TEST(SurfaceMap, OutsideCountsAsTheNearestInside) {
    EXPECT_DOUBLE_EQ(share_at(plane(), {-9, -9}), 0);
    EXPECT_DOUBLE_EQ(share_at(plane(), {9, 9}), 0.4);
}

TEST(SurfaceMap, GridsThatCannotBeDrawn) {
    EXPECT_TRUE(drawable(plane()));
    EXPECT_FALSE(drawable(SurfaceGrid{}));
    SurfaceGrid grid = plane();
    grid.share.pop_back();
    EXPECT_FALSE(drawable(grid));
    grid = plane();
    grid.share[3] = no_number;
    EXPECT_FALSE(drawable(grid));
    grid = plane();
    grid.step_north_m = 0;
    EXPECT_FALSE(drawable(grid));
}

TEST(SurfaceMap, LevelsHoldTheMarksOfTheSupplysVoltage) {
    const site::Job job = looked_at_job();
    const answer::LostNeutralAnswer fault = looked_at_fault();
    const std::vector<double> levels = map_levels(job, fault);
    EXPECT_EQ(levels.size(), 12u);
    int marks = 0;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        EXPECT_GT(levels[i], i > 0 ? levels[i - 1] : 0);
        marks += mark_at(job, fault, levels[i]).has_value();
    }
    EXPECT_EQ(marks, 3);
    EXPECT_EQ(mark_at(job, fault, 50.0 / 230), 50);
    EXPECT_FALSE(mark_at(job, fault, 0.2));
}

}  // namespace
}  // namespace toft::terrain
