#include "soil/confidence.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::soil {
namespace {

/// A world of straight lines: three readings of x + y, x - y and nothing of z.
Taken straight() {
    Taken taken;
    taken.look = [](const LogSoil& s) {
        return Sight{{s[0] + s[1], s[0] - s[1]}, {1, 1, 1, -1, 0, 0}};
    };
    taken.ln = {1, 0};
    taken.weight = {1, 1};
    return taken;
}

const Box cube{{-2, -2, -2}, {2, 2, 2}};
const LogSoil best{0.5, 0.5, 0};

TEST(Confidence, EndsWhereTheSumOfSquaresReachesItsLimit) {
    // The sum is 2 dx^2 + 2 dy^2.
    for (bool up : {false, true}) {
        const Outermost found = outermost(straight(), cube, best, {0, up, 0.5});
        EXPECT_FALSE(found.open);
        EXPECT_NEAR(found.end, up ? 1.0 : 0.0, 0.011);
        EXPECT_NEAR(found.soil[1], 0.5, 1e-6);
        EXPECT_GE(std::fabs(found.end - 0.5), 0.5);
        EXPECT_LE(std::fabs(found.soil[0] - 0.5), 0.5 + 1e-9);
    }
}

TEST(Confidence, IsOpenWhereNothingEnds) {
    const Outermost unseen = outermost(straight(), cube, best, {2, true, 0.5});
    EXPECT_TRUE(unseen.open);
    EXPECT_EQ(unseen.end, 2);
    const Outermost wide = outermost(straight(), cube, best, {0, true, 100});
    EXPECT_TRUE(wide.open);
}

TEST(Confidence, IsOpenWhereOnlyTheBoxOfAnotherFigureStopsIt) {
    // Only x + y is seen: x may go as far as y lets it.
    Taken sum = straight();
    sum.look = [](const LogSoil& s) { return Sight{{s[0] + s[1]}, {1, 1, 0}}; };
    sum.ln = {1};
    sum.weight = {1};
    const Box narrow{{-9, 0, 0}, {9, 1, 0}};
    const Outermost found = outermost(sum, narrow, {0.5, 0.5, 0}, {0, true, 1e-4});
    EXPECT_TRUE(found.open);
    EXPECT_LT(found.end, 1.1);
}

}  // namespace
}  // namespace toft::soil
