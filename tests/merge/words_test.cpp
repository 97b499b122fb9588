#include "merge/words.h"

#include <gtest/gtest.h>

namespace toft::merge {
namespace {

TEST(Words, APlaceIsNamedAsPeopleNameIt) {
    const Where buildings = at_key({}, "buildings");
    const std::size_t first = 0, second = 1;
    const Where studio = at_item(buildings, {{"id", "b2"}, {"name", "Studio"}}, &second);
    EXPECT_EQ(studio.words, "building Studio");
    EXPECT_EQ(studio.pointer, "/buildings/1");
    const Where circuit =
        at_item(at_key(studio, "circuits"), {{"name", "Bench"}, {"load_w", 1}}, &first);
    EXPECT_EQ(at_key(circuit, "load_w").words, "building Studio, circuit Bench, load w");
    EXPECT_EQ(at_key(circuit, "load_w").pointer, "/buildings/1/circuits/0/load_w");
    const Where run = at_item(at_key({}, "runs"), {{"id", "feed"}}, &first);
    EXPECT_EQ(at_item(at_key(run, "legs"), {{"length_m", 1}}, &second).words, "run feed, leg 2");
    EXPECT_EQ(at_item(buildings, {{"id", "b2"}}, nullptr).pointer, "/buildings/-");
}

TEST(Words, AClashSaysWhoDidWhat) {
    const Json before = 3, four = 4, five = 5;
    const Where where{"/a", "place", "a"};
    EXPECT_EQ(clash_words(where, &before, &four, &five),
              "place: 3 before; you say 4, meanwhile it became 5");
    EXPECT_EQ(clash_words(where, &before, nullptr, &five),
              "place: you took it out; meanwhile it was changed");
    EXPECT_EQ(clash_words(where, &before, &four, nullptr),
              "place: you changed it; meanwhile it was taken out");
    EXPECT_EQ(clash_words({}, nullptr, &four, &five),
              "the job: not stated before; you say 4, meanwhile it became 5");
}

TEST(Words, ALongValueIsNotPutIntoTheSentence) {
    const Json list = Json(std::vector<int>(100, 7)), text = std::string(100, 'x'), short_one = "x";
    EXPECT_EQ(clash_words({"/a", "place", "a"}, &short_one, &list, &text),
              "place: x before; you say another list, meanwhile it became something else");
}

}  // namespace
}  // namespace toft::merge
