#include "ware/pence.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

TEST(Pence, ThreePricesOfATenthAreThirtyPence) {
    EXPECT_EQ(pence(pounds(0.1) + pounds(0.1) + pounds(0.1)), 30);
    EXPECT_EQ(pence(of_pence(123456789)), 123456789);
}

TEST(Pence, APriceIsSharedOnlyIntoWholePence) {
    EXPECT_EQ(shared_out(pounds(11.70), 3), pounds(3.90));
    EXPECT_FALSE(shared_out(pounds(10.00), 3));
    EXPECT_FALSE(shared_out(pounds(10.00), 0));
}

}  // namespace
}  // namespace toft::ware
