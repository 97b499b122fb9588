#include "solve/solve.h"

#include "solve/run_solver.h"
#include "solve/tree_solver.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::solve {
namespace {

TEST(Solve, AJobOfOneRunIsSearchedAndOneOfSeveralIsSolvedAsAWhole) {
    const Means means{support::catalogue(), support::demo_book()};
    const site::Job one = support::plain_job();
    const Solution run = solve(means, one);
    EXPECT_EQ(run.key, solve_run(means, one).key);
    EXPECT_EQ(solve_as(means, one, run.schemes).total, run.total);
    const Means small{support::small_shop().catalogue, support::small_shop().book};
    const site::Job two = support::tree_job({support::the_house, 0});
    const Solution whole = solve(small, two);
    ASSERT_EQ(whole.schemes.size(), 2u);
    EXPECT_EQ(whole.key, solve_tree(small, two).key);
    EXPECT_EQ(solve_as(small, two, whole.schemes).total, whole.total);
}

}  // namespace
}  // namespace toft::solve
