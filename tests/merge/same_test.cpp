#include "merge/same.h"

#include <gtest/gtest.h>

namespace toft::merge {
namespace {

const Json three = 3, more = 3.0, null = nullptr;

TEST(Same, KeysMayStandInAnyOrderItemsMayNot) {
    EXPECT_TRUE(same(Json::parse(R"({"a":{"x":1,"y":2}})"), Json::parse(R"({"a":{"y":2,"x":1}})")));
    EXPECT_FALSE(same(Json::parse("[1,2]"), Json::parse("[2,1]")));
    EXPECT_FALSE(same(Json::parse(R"({"a":1})"), Json::parse(R"({"a":1,"b":1})")));
    EXPECT_FALSE(same(Json::parse(R"({"a":1,"c":1})"), Json::parse(R"({"a":1,"b":1})")));
}

TEST(Same, ANumberIsItsValue) {
    EXPECT_TRUE(same(three, more));
    EXPECT_FALSE(same(three, Json("3")));
}

TEST(Same, NothingIsNothingButNotNull) {
    const Json* nothing = nullptr;
    EXPECT_TRUE(same(nothing, nothing));
    EXPECT_FALSE(same(nothing, &null));
    EXPECT_FALSE(same(&three, nothing));
    EXPECT_TRUE(silent(nothing) && silent(&null));
    EXPECT_FALSE(silent(&three));
}

TEST(Same, AKeyOfWhatIsNoObjectIsNothing) {
    const Json object{{"a", 1}};
    EXPECT_EQ(*at(&object, "a"), 1);
    EXPECT_EQ(at(&object, "b"), nullptr);
    EXPECT_EQ(at(&three, "a"), nullptr);
    EXPECT_EQ(at(nullptr, "a"), nullptr);
}

}  // namespace
}  // namespace toft::merge
