#include "solve/solver.h"

#include "solve/tree_solver.h"
#include "support/jobs.h"
#include "support/solving.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::solve {
namespace {

TEST(Solver, OnlyFactsOfTheIntakeWorkAgainstThemselves) {
    EXPECT_TRUE(ends_work_against("/intake/ze_ohm"));
    EXPECT_FALSE(ends_work_against("/runs/0/legs/0/length_m"));
    EXPECT_FALSE(ends_work_against("/buildings/1/construction"));
}

TEST(Solver, AFactOfAllRunsIsOpenOnce) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.intake.main_bonding = {};
    study::GroundMemo memo;
    const TreeSolver whole({support::small_shop().catalogue, support::small_shop().book}, job,
                           memo);
    ASSERT_EQ(whole.open().size(), 1u);
    EXPECT_EQ(whole.open().front().pointer, "/intake/main_bonding_mm2");
    EXPECT_TRUE(whole.dear());
    EXPECT_EQ(whole.prefer(), site::Prefer::price);
}

TEST(Solver, OneRunIsComparedAsTheJobPrefers) {
    site::Job job = support::plain_job();
    job.wishes.prefer = site::Prefer::headroom;
    const support::Solving one(job);
    EXPECT_EQ(one.solver().prefer(), site::Prefer::headroom);
    EXPECT_FALSE(one.solver().dear());
}

}  // namespace
}  // namespace toft::solve
