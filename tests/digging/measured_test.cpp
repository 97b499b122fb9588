#include "digging/measured.h"

#include <gtest/gtest.h>

#include <limits>

namespace toft::digging {
namespace {

TEST(Measured, AMetreAtOneToTwoHundredIsFiveMillimetres) {
    EXPECT_NEAR(drawing::mm_of_units(units_a_metre(200)), 5, 1e-12);
    EXPECT_NEAR(drawing::mm_of_units(units_a_metre(5)), 200, 1e-9);
}

TEST(Measured, WidthsAreTakenIntoWhatCanBeLaidOut) {
    EXPECT_EQ(width_of({0, true}), paper_wide);
    EXPECT_EQ(width_of({-4, true}), paper_wide);
    EXPECT_EQ(width_of({std::numeric_limits<double>::quiet_NaN(), true}), paper_wide);
    EXPECT_EQ(width_of({100, true}), 320);
    EXPECT_EQ(width_of({500, true}), 500);
    EXPECT_EQ(width_of({9000, true}), 1400);
}

}  // namespace
}  // namespace toft::digging
