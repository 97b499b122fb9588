#include "parts/core_section.h"

#include "drawing/conductor_colours.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

TEST(CoreSection, ColoursAreThoseOfIec60445AndNothingIsGuessed) {
    EXPECT_EQ(core_colour("brown"), drawing::conductor::brown);
    EXPECT_EQ(core_colour("blue"), drawing::conductor::blue);
    EXPECT_TRUE(core_colour("black"));
    EXPECT_TRUE(core_colour("grey"));
    EXPECT_FALSE(core_colour("mauve"));
    EXPECT_FALSE(core_colour(""));
}

TEST(CoreSection, WordsNameTheSleeveWhereACoreServesAsAnother) {
    EXPECT_EQ(core_words({"brown", "", "line"}), "brown");
    EXPECT_EQ(core_words({"grey", "blue", "neutral"}), "grey, sleeved blue");
    EXPECT_EQ(core_words({"bare", "green-yellow", "protective"}), "bare, sleeved green-and-yellow");
}

TEST(CoreSection, EveryCoreOfTheTradeIsDrawn) {
    for (const char* colour : {"brown", "blue", "black", "grey", "green-yellow", "bare"}) {
        EXPECT_FALSE(core_section({colour, "", "line"}, {0, 0}, 10).empty()) << colour;
    }
    EXPECT_FALSE(separate_section({0, 0}).empty());
}

}  // namespace
}  // namespace toft::parts
