#include "dxf/words.h"

#include <gtest/gtest.h>

namespace toft::dxf {
namespace {

TEST(DxfWords, OnlyAsciiIsWritten) {
    EXPECT_EQ(ascii("A2  21 m"), "A2  21 m");
    EXPECT_EQ(ascii("10 mm²"), "10 mm\\U+00B2");
    EXPECT_EQ(ascii("緑"), "\\U+7DD1");
    EXPECT_EQ(ascii("بيت"), "\\U+0628\\U+064A\\U+062A");
    EXPECT_EQ(ascii("\xF0\x9F\x8C\xBF"), "\\U+D83C\\U+DF3F");
}

TEST(DxfWords, NothingThatAUserWroteIsReadAsACode) {
    EXPECT_EQ(ascii("100 %"), "100 %%%");
    EXPECT_EQ(ascii("%%d"), "%%%%%%d");
    EXPECT_EQ(ascii("\\U+0041"), "\\U+005CU+0041");
    EXPECT_EQ(ascii("^J"), "^ J");
    EXPECT_EQ(ascii("a\nb\r\n0\nEOF").find('\n'), std::string::npos);
}

TEST(DxfWords, LongWordsFitIntoTheirGroups) {
    std::string name;
    for (int i = 0; i < 100; ++i) name += "緑";
    std::string all;
    for (const std::string& part : in_values(name)) {
        EXPECT_LE(ascii(part).size(), longest_value);
        all += part;
    }
    EXPECT_EQ(all, name);
    EXPECT_TRUE(in_values("").empty());
}

TEST(DxfWords, LayersHavePlainNames) {
    EXPECT_EQ(layer_name("buildings"), "BUILDINGS");
    EXPECT_EQ(layer_name("separate-conductor other"), "SEPARATE_CONDUCTOR");
    EXPECT_EQ(layer_name("緑"), "SHEET");
    EXPECT_EQ(layer_name(std::string(60, 'a')).size(), 31u);
}

}  // namespace
}  // namespace toft::dxf
