#include "merge/likeness.h"

#include <gtest/gtest.h>

namespace toft::merge {
namespace {

Told told_of(const std::string& a, const std::string& b = "[]") {
    const Json one = Json::parse(a), other = Json::parse(b);
    return told({&one, &other});
}

/// "0>1 1>- ": where each item went; "?" when it cannot be told.
std::string went(const std::string& from, const std::string& to) {
    const Json a = Json::parse(from), b = Json::parse(to);
    const auto found = pairs(a, b, told({&a, &b}));
    if (!found) return "?";
    std::string text;
    for (std::size_t i = 0; i < found->size(); ++i) {
        text += std::to_string(i) + ">" + ((*found)[i] ? std::to_string(*(*found)[i]) : "-") + " ";
    }
    return text;
}

TEST(Likeness, BuildingsAreToldByIdCircuitsByNameLegsByPlaceWordsNotAtAll) {
    EXPECT_EQ(told_of(R"([{"id":"a","name":"x"},{"id":"b"}])"), Told::by_id);
    EXPECT_EQ(told_of(R"([{"id":"a"},{"id":"a"}])"), Told::not_at_all);
    EXPECT_EQ(told_of(R"([{"id":"a"}])", R"([{"name":"a"}])"), Told::not_at_all);
    EXPECT_EQ(told_of(R"([{"name":"a"},{"name":"a"}])"), Told::by_name);
    EXPECT_EQ(told_of(R"([{"what":"fence"}])"), Told::by_name);
    EXPECT_EQ(told_of(R"([{"method":"clipped"}])"), Told::by_place);
    EXPECT_EQ(told_of("[1,2]"), Told::not_at_all);
    EXPECT_EQ(told_of(R"(["gas pipe"])"), Told::not_at_all);
    EXPECT_EQ(told_of("[]"), Told::not_at_all);
    EXPECT_EQ(told_of(R"([{"id":1}])"), Told::not_at_all);
}

TEST(Likeness, AListTooLongToPairIsOneFact) {
    Json list = Json::array();
    for (int i = 0; i < 2001; ++i) list.push_back({{"name", std::to_string(i)}});
    EXPECT_EQ(told({&list}), Told::not_at_all);
}

TEST(Likeness, IdsAreFoundWhereverTheyStand) {
    EXPECT_EQ(went(R"([{"id":"a"},{"id":"b"}])", R"([{"id":"c"},{"id":"a","x":1}])"), "0>1 1>- ");
}

TEST(Likeness, OfThingsCalledAlikeTheUnchangedAreFoundFirst) {
    const std::string two = R"([{"what":"water pipe","d":1},{"what":"water pipe","d":2}])";
    EXPECT_EQ(went(two, R"([{"what":"water pipe","d":2}])"), "0>- 1>0 ");
    EXPECT_EQ(went(two, R"([{"what":"water pipe","d":2},{"what":"water pipe","d":3}])"),
              "0>1 1>0 ");
    EXPECT_EQ(went(two, R"([{"what":"water pipe","d":9}])"), "?") << "either may have gone";
    EXPECT_EQ(went(two, R"([{"what":"fence"}])"), "0>- 1>- ");
}

TEST(Likeness, ACircuitWithANewNameIsTheSameWhenNothingElseIsNew) {
    const std::string was = R"([{"name":"Sockets","load_w":1},{"name":"Lights","load_w":2}])";
    EXPECT_EQ(went(was, R"([{"name":"Bench","load_w":1},{"name":"Lights","load_w":2}])"),
              "0>0 1>1 ");
    EXPECT_EQ(went(was, R"([{"name":"Bench","load_w":5},{"name":"Lights","load_w":2}])"),
              "0>- 1>1 ");
    EXPECT_EQ(went(R"([{"what":"fence","x":1}])", R"([{"what":"drain","x":1}])"), "0>- ");
}

TEST(Likeness, LegsAreToldByPlaceUnlessOneMovedOrTheirNumberChanged) {
    const std::string legs = R"([{"length_m":1},{"length_m":2}])";
    EXPECT_EQ(went(legs, R"([{"length_m":1},{"length_m":3}])"), "0>0 1>1 ");
    EXPECT_EQ(went(legs, R"([{"length_m":2},{"length_m":3}])"), "?");
    EXPECT_EQ(went(legs, R"([{"length_m":1}])"), "?");
}

TEST(Likeness, WordsAreNeverPaired) { EXPECT_EQ(went("[1]", "[1]"), "?"); }

}  // namespace
}  // namespace toft::merge
