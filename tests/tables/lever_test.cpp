#include "tables/lever.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

TEST(Lever, IsFoundByItsKey) {
    const Levers& levers = support::catalogue().levers;
    ASSERT_NE(find_lever(levers, "soft-start"), nullptr);
    EXPECT_EQ(*find_lever(levers, "soft-start")->value, 3);
    EXPECT_FALSE(find_lever(levers, "duct")->value.has_value());
    EXPECT_EQ(find_lever(levers, "magic"), nullptr);
}

}  // namespace
}  // namespace toft::tables
