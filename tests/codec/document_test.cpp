#include "codec/document.h"

#include "codec/reading.h"

#include <fmt/format.h>
#include <rapidcheck/gtest.h>

namespace toft::codec {
namespace {

Gist faults_at(const std::string& text) {
    const auto document = parse_document(text);
    return document ? Gist{} : gist(document.error());
}

std::string says(const std::string& text) {
    const auto document = parse_document(text);
    return document ? "" : document.error().front().says;
}

TEST(Document, PlainJsonIsReadInItsOrder) {
    const auto document = parse_document(R"({"b": [1, null, "é"], "a": {"c": true}})");
    ASSERT_TRUE(document);
    EXPECT_EQ(document->dump(), R"({"b":[1,null,"é"],"a":{"c":true}})");
}

TEST(Document, WhatIsNoJsonIsRefusedWithItsPlace) {
    EXPECT_EQ(faults_at(""), Gist{" not-json"});
    EXPECT_EQ(faults_at("{\"a\": 1"), Gist{" not-json"});
    EXPECT_EQ(faults_at("{\"a\": 1} x"), Gist{" not-json"});
    EXPECT_EQ(faults_at("{'a': 1}"), Gist{" not-json"});
    EXPECT_EQ(faults_at("{\"a\": 01}"), Gist{" not-json"});
    EXPECT_EQ(faults_at("{\"a\": 1,}"), Gist{" not-json"});
    EXPECT_EQ(says("{\n \"a\": x}"), "not valid JSON at line 2, column 7");
}

TEST(Document, NumbersOutOfAllRangeAndNoNumbersAreRefused) {
    for (const char* number :
         {"1e999", "-1e999", "NaN", "nan", "Infinity", "-Infinity", "+1", ".5", "0x10", "1."}) {
        EXPECT_EQ(faults_at(std::string("{\"a\": ") + number + "}"), Gist{" not-json"}) << number;
    }
    EXPECT_TRUE(parse_document("{\"a\": 1e-999}")) << "too small to tell from 0";
}

TEST(Document, OnlyWholeUtf8IsRead) {
    const std::vector<std::string> spoilt{
        "\xff", "\xc3", "\xc0\xaf", "\xed\xa0\x80", "\xf5\x80\x80\x80", "\xe2\x82", "\x80"};
    for (const std::string& bytes : spoilt) {
        EXPECT_EQ(faults_at("{\"a\": \"" + bytes + "\"}"), Gist{" not-json"});
        EXPECT_EQ(faults_at("{\"" + bytes + "\": 1}"), Gist{" not-json"});
        EXPECT_EQ(faults_at(bytes), Gist{" not-json"});
    }
    EXPECT_EQ(faults_at(R"({"a": "\ud800"})"), Gist{" not-json"});
    EXPECT_EQ(faults_at(R"({"a": "\udc00\ud800"})"), Gist{" not-json"});
    EXPECT_TRUE(parse_document(R"({"a": "\ud83d\ude00"})"));
    EXPECT_EQ(faults_at("{\"a\": \"\x01\"}"), Gist{" not-json"});
    EXPECT_EQ(faults_at(std::string("{\"a\": \"\0\"}", 11)), Gist{" not-json"});
}

TEST(Document, AByteOrderMarkIsPassedOver) {
    EXPECT_TRUE(parse_document("\xef\xbb\xbf{\"a\": 1}"));
    EXPECT_EQ(faults_at("\xfe\xff{\"a\": 1}"), Gist{" not-json"});
}

TEST(Document, EveryRepeatedKeyIsPointedAt) {
    EXPECT_EQ(faults_at(R"({"a": 1, "b": [0, {"c": 1, "d": [], "c": 2}], "a": 3})"),
              (Gist{"/a duplicate-key", "/b/1/c duplicate-key"}));
    EXPECT_EQ(faults_at(R"({"x/y": 1, "x/y": 2, "~": 1, "~": 1})"),
              (Gist{"/x~1y duplicate-key", "/~0 duplicate-key"}));
    EXPECT_EQ(faults_at(R"([[{"a": 1}, {"a": 1}], {"a": {"a": 1}}])"), Gist{});
}

TEST(Document, DepthSizeAndCrowdingHaveTheirLimit) {
    const auto nested = [](std::size_t depth) {
        return std::string(depth, '[') + std::string(depth, ']');
    };
    EXPECT_TRUE(parse_document(nested(deepest_document)));
    EXPECT_EQ(faults_at(nested(deepest_document + 1)), Gist{" too-deep"});
    EXPECT_EQ(faults_at(std::string(largest_document, '[')), Gist{" too-deep"});
    EXPECT_TRUE(parse_document("\"" + std::string(largest_document - 2, 'x') + "\""));
    EXPECT_EQ(faults_at("\"" + std::string(largest_document - 1, 'x') + "\""), Gist{" too-large"});
    std::string crowded = "{\"k\": [";
    for (std::size_t i = 0; i < most_keys; ++i) crowded += (i ? ", {\"a\": 1}" : "{\"a\": 1}");
    EXPECT_TRUE(parse_document(crowded + "]}"));
    crowded = "{";
    for (std::size_t i = 0; i < most_keys; ++i) crowded += fmt::format("\"{}\": 1, ", i);
    EXPECT_EQ(faults_at(crowded + "\"x\": 1}"), Gist{" too-many"});
    EXPECT_TRUE(parse_document("{\"a\": \"" + std::string(1000, ':') + "[[[\\\"\"}"));
}

TEST(Document, OtherBoundsMayBeAskedFor) {
    const auto code = [](const std::string& text, const Bounds& bounds) {
        const auto document = parse_document(text, bounds);
        return document ? "" : document.error().front().code;
    };
    EXPECT_EQ(code("[[1]]", {5, 2, 1}), "");
    EXPECT_EQ(code("[[1]]", {4, 2, 1}), "too-large");
    EXPECT_EQ(code("[[1]]", {5, 1, 1}), "too-deep");
    EXPECT_EQ(code(R"({"a":1,"b":2})", {50, 2, 1}), "too-many");
    EXPECT_EQ(code("[[1]]" + std::string(largest_document, ' '), {largest_document * 2, 2, 1}), "");
}

TEST(Document, AListOfManyObjectsIsReadInNoTime) {
    std::string text = "[{}";
    for (std::size_t i = 2; i < most_values; ++i) text += ",{}";
    const auto document = parse_document(text + "]");
    ASSERT_TRUE(document);
    EXPECT_EQ(document->size(), most_values - 1) << "the list is a value, too";
    EXPECT_EQ(faults_at(text + ",{}]"), Gist{" too-many"});
}

TEST(Document, ValuesOfEveryKindAreCountedAndKeysAreNot) {
    const std::string seven = R"({"a": [1, -1, 0.5, "x"], "b": null})";
    Bounds bounds;
    bounds.values = 7;
    EXPECT_TRUE(parse_document(seven, bounds));
    bounds.values = 6;
    const auto refused = parse_document(seven, bounds);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().code, "too-many");
    EXPECT_NE(refused.error().front().says.find("more than 6 values"), std::string::npos);
    for (const char* one : {"1", "-1", "0.5", "true", "null", "\"x\"", "[]", "{}"}) {
        bounds.values = 2;
        EXPECT_TRUE(parse_document("[" + std::string(one) + "]", bounds)) << one;
        bounds.values = 1;
        EXPECT_FALSE(parse_document("[" + std::string(one) + "]", bounds)) << one;
    }
}

TEST(Document, ASyntaxErrorAfterTooManyValuesIsNotLookedFor) {
    Bounds bounds;
    bounds.values = 3;
    const auto refused = parse_document("[1, 2, 3, 4, oops", bounds);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().code, "too-many");
}

TEST(Document, PointersAreEscaped) {
    EXPECT_EQ(child_pointer("", "a"), "/a");
    EXPECT_EQ(child_pointer("/a", "b/c~d"), "/a/b~1c~0d");
    EXPECT_EQ(child_pointer("/a", ""), "/a/");
}

RC_GTEST_PROP(Document, AnyBytesAreReadOrRefusedWithAFault, (const std::string& text)) {
    const auto document = parse_document(text);
    if (!document) RC_ASSERT(!document.error().empty());
}

}  // namespace
}  // namespace toft::codec
