#include "curves/plot.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

TEST(Plot, HoldsTheBandTheCurrentsTheTimeAllowedAndEveryConductorsWithstand) {
    const auto& one = picture::example("demo");
    const auto& scheme = one.answer.schemes.front();
    const auto lines = withstands(support::catalogue(), scheme.scheme);
    ASSERT_FALSE(lines.empty());
    const drawing::Items items =
        plotted(plain_paper(), {support::catalogue(), one.job, scheme, lines});
    EXPECT_TRUE(picture::says(items, "Ib"));
    EXPECT_TRUE(picture::says(items, "Iz"));
    EXPECT_TRUE(picture::says(items, "earth fault off within"));
    EXPECT_EQ(picture::count_kind(items, "operates"), 1);
    const auto without = plotted(plain_paper(), {support::catalogue(), one.job, scheme, {}});
    EXPECT_GT(items.size(), without.size());
}

}  // namespace
}  // namespace toft::curves
