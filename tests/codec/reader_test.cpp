#include "codec/reader.h"

#include "codec/reading.h"

namespace toft::codec {
namespace {

class Reading : public ::testing::Test {
protected:
    Reader reader(const char* text) {
        node_ = Json::parse(text);
        return Reader(node_, "/here", faults_);
    }
    Gist said() const { return gist(faults_); }

    Json node_;
    Faults faults_;
};

TEST_F(Reading, TextIsHandedOnAsItStands) {
    Reader in = reader(R"({"a": "Küche \"<&>\" 炉", "b": null})");
    EXPECT_EQ(in.text("a", true), "Küche \"<&>\" 炉");
    EXPECT_EQ(in.text("b"), "");
    EXPECT_EQ(in.text("c"), "");
    EXPECT_EQ(said(), Gist{});
    in.text("b", true);
    in.text("c", true);
    EXPECT_EQ(said(), (Gist{"/here/b missing", "/here/c missing"}));
}

TEST_F(Reading, AMisspeltWordNamesTheNearest) {
    Reader in = reader(R"({"a": "apel", "b": "xyzzy", "c": 3})");
    for (const char* key : {"a", "b", "c"}) EXPECT_EQ(in.listed(key, {"apple", "pear"}), "");
    EXPECT_EQ(said(), (Gist{"/here/a unknown-word", "/here/b unknown-word", "/here/c wrong-kind"}));
    EXPECT_EQ(faults_[0].nearest, "apple");
    EXPECT_EQ(faults_[1].nearest, "");
    EXPECT_EQ(faults_[1].allowed, (std::vector<std::string>{"apple", "pear"}));
}

TEST_F(Reading, LongForeignWordsAreCutAndHarmless) {
    std::string word(79, 'a');
    word += "é\x1b";
    for (int i = 0; i < 20; ++i) word += "é";
    node_ = Json{{word, 1}};
    Reader in(node_, "", faults_);
    in.finish();
    ASSERT_EQ(said().size(), 1u);
    EXPECT_EQ(faults_[0].says.find('\x1b'), std::string::npos);
    EXPECT_NE(faults_[0].says.find(std::string(79, 'a') + "…"), std::string::npos);
    EXPECT_NO_THROW(Json(faults_[0].says).dump());
}

TEST_F(Reading, ARangeKnowsItsSpreadAndOneFigureHasNone) {
    Reader in = reader(R"({"a": {"low": 1, "high": 2, "spread": "bell"},
                           "b": {"low": 1, "high": 2},
                           "c": {"value": 1, "spread": "bell"},
                           "d": {"low": 1, "high": 2, "spread": "wide"}})");
    EXPECT_EQ(in.fact<Metres>("a", {0, 9}).spread, site::Spread::bell);
    EXPECT_EQ(in.fact<Metres>("b", {0, 9}).spread, site::Spread::even);
    in.fact<Metres>("c", {0, 9});
    in.fact<Metres>("d", {0, 9});
    EXPECT_EQ(said(), (Gist{"/here/c/spread contradiction", "/here/d/spread unknown-word"}));
}

TEST_F(Reading, AFactKnowsItsStanding) {
    Reader in = reader(R"({"a": 2, "b": {"value": 3, "basis": "declared"},
                           "c": {"low": 1, "high": 4}, "d": null,
                           "e": {"low": 1, "high": 4, "basis": "measured", "value": null}})");
    const Range range{0, 10};
    const auto a = in.fact<Amperes>("a", range, 1e-3);
    EXPECT_TRUE(a.single());
    EXPECT_EQ(a.low, amperes(0.002));
    EXPECT_EQ(a.standing, site::Standing::measured);
    EXPECT_EQ(in.fact<double>("b", range).standing, site::Standing::declared);
    const auto c = in.fact<double>("c", range);
    EXPECT_EQ(c.low, 1);
    EXPECT_EQ(c.high, 4);
    EXPECT_EQ(c.standing, site::Standing::assumed);
    EXPECT_FALSE(in.fact<double>("d", range).known);
    EXPECT_EQ(in.fact<double>("e", range).standing, site::Standing::measured);
    EXPECT_FALSE(in.fact<double>("f", range).known);
    EXPECT_EQ(said(), Gist{});
}

TEST_F(Reading, AFactIsAValueOrARangeAndNeverBoth) {
    Reader in = reader(R"({"a": {"value": 1, "low": 0}, "b": {"low": 1}, "c": {"high": 1}, "d": {},
                           "e": {"low": 3, "high": 2}, "f": {"value": 1, "basis": "guess"},
                           "g": {"value": "1"}, "h": {"value": 1, "vlaue": 2},
                           "i": {"value": null, "basis": "measured"}, "j": [1, 2]})");
    for (const char* key : {"a", "b", "c", "d", "e", "f", "g", "h", "i", "j"}) {
        in.fact<double>(key, {0, 10});
    }
    EXPECT_EQ(said(),
              (Gist{"/here/a wrong-kind", "/here/b wrong-kind", "/here/c wrong-kind",
                    "/here/d wrong-kind", "/here/e out-of-range", "/here/f/basis unknown-word",
                    "/here/g/value wrong-kind", "/here/h/vlaue unknown-key", "/here/i wrong-kind",
                    "/here/j wrong-kind"}));
    EXPECT_EQ(faults_[7].nearest, "value");
}

TEST_F(Reading, RangesIncludeTheirEndsAndCountsAreWhole) {
    Reader in = reader(R"({"low": 1, "high": 2, "under": 0.999, "over": 2.001, "half": 1.5})");
    for (const char* key : {"low", "high", "half"}) EXPECT_TRUE(in.number(key, {1, 2})) << key;
    EXPECT_EQ(said(), Gist{});
    EXPECT_FALSE(in.number("under", {1, 2}));
    EXPECT_FALSE(in.number("over", {1, 2}));
    EXPECT_FALSE(in.number("half", {1, 2, true}));
    EXPECT_EQ(said(), (Gist{"/here/under out-of-range", "/here/over out-of-range",
                            "/here/half out-of-range"}));
}

TEST_F(Reading, AnswersMayBeUnknown) {
    Reader in = reader(R"({"a": true, "b": false, "c": null, "d": 1})");
    EXPECT_EQ(in.answer("a"), site::Answer::yes);
    EXPECT_EQ(in.answer("b"), site::Answer::no);
    EXPECT_EQ(in.answer("c"), site::Answer::unknown);
    EXPECT_EQ(in.answer("e"), site::Answer::unknown);
    EXPECT_EQ(said(), Gist{});
    EXPECT_EQ(in.answer("d"), site::Answer::unknown);
    EXPECT_EQ(said(), Gist{"/here/d wrong-kind"});
}

TEST_F(Reading, ListsHoldObjectsOrWords) {
    Reader in = reader(R"({"a": [{"x": 1}, 2, {"x": 3}], "b": {}, "c": [1, 2, 3],
                           "d": ["on", "of", 4], "e": "on"})");
    EXPECT_EQ(in.objects("a", 3).size(), 2u);
    EXPECT_EQ(in.objects("a", 3)[1].pointer(), "/here/a/2");
    in.objects("b", 3);
    in.objects("c", 2);
    EXPECT_EQ(in.list_of("d", {"on", "off"}), (std::vector<std::string>{"on"}));
    in.list_of("e", {"on"});
    EXPECT_TRUE(in.objects("none", 3).empty());
    EXPECT_EQ(said(), (Gist{"/here/a/1 wrong-kind", "/here/a/1 wrong-kind", "/here/b wrong-kind",
                            "/here/c too-many", "/here/d/1 unknown-word", "/here/d/2 wrong-kind",
                            "/here/e wrong-kind"}));
}

TEST_F(Reading, WhatNobodyAskedForIsRefusedAtTheEnd) {
    Reader in = reader(R"({"depth_m": 1, "deptj_m": 2, "a/b": 3})");
    in.number("depth_m", {0, 3});
    EXPECT_NE(in.takes("a/b"), nullptr);
    in.finish();
    EXPECT_EQ(said(), Gist{"/here/deptj_m unknown-key"});
    EXPECT_EQ(faults_[0].nearest, "depth_m");
}

TEST_F(Reading, NestedObjectsCarryTheirPointer) {
    Reader in = reader(R"({"a": {"b": {"c": "x"}}, "d": 1})");
    auto a = in.object("a");
    ASSERT_TRUE(a);
    auto b = a->object("b", true);
    ASSERT_TRUE(b);
    b->number("c", {0, 1});
    EXPECT_FALSE(in.object("d"));
    EXPECT_FALSE(in.object("none"));
    EXPECT_FALSE(in.object("must", true));
    EXPECT_EQ(said(), (Gist{"/here/a/b/c wrong-kind", "/here/d wrong-kind", "/here/must missing"}));
}

TEST_F(Reading, FaultsHaveAnEnd) {
    node_ = Json::array();
    for (std::size_t i = 0; i < 2 * most_faults; ++i) node_.push_back(0);
    node_ = Json{{"a", node_}};
    Reader in(node_, "", faults_);
    in.objects("a", 4 * most_faults);
    EXPECT_EQ(faults_.size(), most_faults);
}

}  // namespace
}  // namespace toft::codec
