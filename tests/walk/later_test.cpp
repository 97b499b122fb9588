#include "walk/later.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

TEST(LaterStep, IsAskedLastAndDecidesNothing) {
    const Walk w = walked(support::plain_job());
    ASSERT_EQ(w.steps.back().key, "later");
    EXPECT_EQ(w.steps.back().ruling.known, Known::unknown);
    for (const Way& way : w.ways) {
        EXPECT_EQ(w.steps.back().ruling[way.choice].bearing, Bearing::neutral);
    }
    EXPECT_FALSE(w.steps.back().would_change.empty());
}

TEST(LaterStep, TellsWhatIsToCome) {
    site::Job job = support::plain_job();
    job.buildings[1].future_load = support::measured(amperes(16));
    const Walk w = walked(job);
    EXPECT_EQ(w.steps.back().ruling.known, Known::stated);
    EXPECT_TRUE(holds(w.steps.back().found, "16 A"));
}

}  // namespace
}  // namespace toft::walk
