#include "picture/run_way.h"

#include "picture/looking.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using drawing::Point;

TEST(RunWay, StretchesMeetInTheirJoints) {
    int joints_seen = 0;
    for (const std::string& name : drawn_job_names()) {
        const Example& one = example(name);
        ASSERT_FALSE(one.answer.schemes.empty()) << name;
        const Stage stage = set_stage(one.job, &one.answer.schemes[0]);
        const std::vector<Point> joints = joints_of(stage);
        const std::size_t count = stage.scheme->run.stretches.size();
        ASSERT_EQ(joints.size() + 1, count);
        for (std::size_t i = 0; i + 1 < count; ++i) {
            EXPECT_EQ(stretch_way(stage, i).back(), joints[i]) << name;
            EXPECT_EQ(stretch_way(stage, i + 1).front(), joints[i]) << name;
            EXPECT_LE(joints[i].y, stage.ground) << "no joint is buried unless the run is";
            ++joints_seen;
        }
        EXPECT_EQ(stretch_way(stage, 0).front(), cable_way(stage).front());
        EXPECT_EQ(stretch_way(stage, count - 1).back(), cable_way(stage).back());
        for (std::size_t i = 0; i < count; ++i) {
            const std::vector<Point> way = stretch_way(stage, i);
            for (std::size_t k = 1; k < way.size(); ++k) EXPECT_GE(way[k].x, way[k - 1].x);
        }
    }
    EXPECT_EQ(joints_seen, 1 + 2 + 2);
}

TEST(RunWay, JointsStandInsideTheBuildings) {
    const Example& one = example("hidden-flat-cable");
    const Stage stage = set_stage(one.job, &one.answer.schemes[0]);
    const std::vector<Point> joints = joints_of(stage);
    ASSERT_EQ(joints.size(), 2u);
    EXPECT_LT(joints[0].x, stage.house_box.right);
    EXPECT_GT(joints[1].x, stage.far_box.left);
}

TEST(RunWay, AnOverheadLegHangsBetweenItsEnds) {
    const site::Job job =
        support::job_with_legs({support::plain_leg(site::LegMethod::overhead, 20)});
    const Stage stage = set_stage(job, nullptr);
    const std::vector<Point> line = leg_line(stage, 0);
    ASSERT_GT(line.size(), 4u);
    EXPECT_EQ(line.front().y, line.back().y);
    EXPECT_GT(line[line.size() / 2].y, line.front().y + 10);
    for (const Point p : line) EXPECT_LT(p.y, stage.ground);
    EXPECT_TRUE(joints_of(stage).empty());
}

TEST(RunWay, BesideKeepsItsDistanceRoundCorners) {
    const std::vector<Point> way{{0, 0}, {10, 0}, {10, 0}, {10, 20}, {40, 20}};
    const std::vector<Point> wanted{{0, -2}, {12, -2}, {12, 18}, {40, 18}};
    const std::vector<Point> moved = beside(way, 2);
    ASSERT_EQ(moved.size(), wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        EXPECT_NEAR(moved[i].x, wanted[i].x, 1e-9) << i;
        EXPECT_NEAR(moved[i].y, wanted[i].y, 1e-9) << i;
    }
}

}  // namespace
}  // namespace toft::picture
