// The linear sizing of runs against an integer program of the same problem, solved by Cbc
// (COIN-OR branch and cut).

#include "spread/solve.h"
#include "support/cbc.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>

namespace toft::spread {
namespace {

using support::Shape;

void expect_like_cbc(Shape shape, std::size_t branches, unsigned seed, std::size_t resources = 2) {
    const Problem problem = support::drawn_sizing(shape, branches, seed, resources);
    const auto answer = solve(problem);
    ASSERT_TRUE(answer);
    const auto other = support::ask_cbc(problem, 60);
    ASSERT_TRUE(other.proved && other.price) << branches << " branches, seed " << seed;
    EXPECT_EQ(answer->standing, Standing::proved);
    EXPECT_TRUE(keeps_limits(problem, answer->chosen));
    EXPECT_NEAR(answer->price / *other.price, 1, 1e-8) << branches << " branches, seed " << seed;
}

TEST(Sizing, TreesCostWhatTheIntegerProgramCosts) {
    for (unsigned seed = 0; seed < 120; ++seed) expect_like_cbc(Shape::tree, 2 + seed % 11, seed);
}

TEST(Sizing, ChainsCostWhatTheIntegerProgramCosts) {
    for (unsigned seed = 0; seed < 50; ++seed) expect_like_cbc(Shape::chain, 3 + seed % 10, seed);
}

TEST(Sizing, StarsCostWhatTheIntegerProgramCosts) {
    for (unsigned seed = 0; seed < 50; ++seed) expect_like_cbc(Shape::star, 3 + seed % 10, seed);
}

TEST(Sizing, SoDoTreesWithThreeToEightResources) {
    for (unsigned seed = 0; seed < 40; ++seed) {
        expect_like_cbc(Shape::tree, 3 + seed % 10, seed, 3 + seed % 6);
    }
}

}  // namespace
}  // namespace toft::spread
