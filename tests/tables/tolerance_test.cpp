#include "tables/tolerance.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

TEST(Tolerance, IsFoundByWhatAFigureTellsAndHowItIsKnown) {
    const auto& rows = support::catalogue().tolerances;
    ASSERT_NE(find_tolerance(rows, "length", "assumed"), nullptr);
    EXPECT_EQ(find_tolerance(rows, "length", "assumed")->per_cent, 10);
    EXPECT_LT(find_tolerance(rows, "length", "measured")->per_cent, 10);
    EXPECT_EQ(find_tolerance(rows, "length", "declared"), nullptr);
    EXPECT_EQ(find_tolerance(rows, "temper", "measured"), nullptr);
}

}  // namespace
}  // namespace toft::tables
