// A scheme said in plain English.

#include "paper/plain_words.h"

#include "paper/written.h"

namespace toft::paper {
namespace {

const answer::SchemeAnswer& first_of(const char* name) {
    return picture::example(name).answer.schemes.front();
}

TEST(PlainWords, ASchemeIsSaidWithoutTheTradesUnits) {
    for (const char* name : {"demo", "tt-shed", "own-rod-greenhouse", "tn-s-workshop"}) {
        const answer::SchemeAnswer& scheme = first_of(name);
        const std::string words = sentence_plain(scheme);
        for (const char* symbol : {" A ", "kA", "mA", "RCD", "RCBO", "tails", "XLPE"}) {
            EXPECT_EQ(words.find(symbol), std::string::npos) << words;
        }
        EXPECT_NE(words.find(significant(scheme.run.device.rating_a, 6) + " amp"),
                  std::string::npos);
        EXPECT_NE(words.find(significant(scheme.run.live_mm2, 6) + " mm²"), std::string::npos);
    }
}

TEST(PlainWords, WhoseEarthItIsIsSaid) {
    EXPECT_NE(sentence_plain(first_of("demo")).find("its earth is the house's"), std::string::npos);
    EXPECT_NE(sentence_plain(first_of("own-rod-greenhouse")).find("an earth rod of its own"),
              std::string::npos);
}

TEST(PlainWords, AWireBesideTheCableIsTold) {
    bool met = false;
    for (const answer::SchemeAnswer& scheme : picture::example("demo").answer.schemes) {
        const std::string words = sentence_plain(scheme);
        const bool beside = scheme.run.separate_mm2.has_value();
        met = met || beside;
        EXPECT_EQ(words.find("wire beside") != std::string::npos, beside) << words;
    }
    EXPECT_TRUE(met);
}

TEST(PlainWords, BondsAreNamed) {
    EXPECT_NE(sentence_plain(first_of("demo")).find("the water pipe tied to it"),
              std::string::npos);
}

TEST(PlainWords, WhatSafetyRestsOnGoesByEarthAndPath) {
    EXPECT_NE(rests_on(first_of("demo")).find("two paths"), std::string::npos);
    EXPECT_NE(rests_on(first_of("own-rod-greenhouse")).find("the earth rod"), std::string::npos);
    EXPECT_NE(rests_on(first_of("tt-shed")).find("an earth rod elsewhere"), std::string::npos);
}

TEST(PlainWords, TheTightestLimitIsNamed) {
    EXPECT_EQ(limit_plain("voltage-drop"), "the voltage lost along the cable");
    EXPECT_EQ(limit_plain("overload of garage-feed"),
              "the load on the breaker or fuse, garage-feed");
    EXPECT_EQ(limit_plain("some-rule"), "some rule");
}

bool holds_in(const char* name, const char* situation) {
    const auto& one = picture::example(name);
    const auto all = situations_of(subject_of(one), one.answer.schemes.front());
    return std::find(all.begin(), all.end(), situation) != all.end();
}

TEST(PlainWords, SituationsFollowWhatIsBuilt) {
    EXPECT_TRUE(holds_in("demo", "combined earth"));
    EXPECT_TRUE(holds_in("demo", "bonded"));
    EXPECT_TRUE(holds_in("demo", "buried"));
    EXPECT_TRUE(holds_in("demo", "breaker"));
    EXPECT_TRUE(holds_in("tn-s-workshop", "separate earth"));
    EXPECT_TRUE(holds_in("tn-s-workshop", "fuse"));
    EXPECT_TRUE(holds_in("own-rod-greenhouse", "own electrode"));
    EXPECT_TRUE(holds_in("tt-shed", "shared electrode"));
    EXPECT_TRUE(holds_in("sunny-garage", "sources"));
    EXPECT_FALSE(holds_in("demo", "sources"));
    EXPECT_FALSE(holds_in("demo", "own electrode"));
    EXPECT_FALSE(holds_in("demo", "high voltage"));
}

TEST(PlainWords, EverySituationIsOneThatTheTablesKnow) {
    for (const char* name : {"demo", "sunny-garage", "tt-shed", "own-rod-greenhouse"}) {
        const auto& one = picture::example(name);
        for (const auto& situation : situations_of(subject_of(one), one.answer.schemes.front())) {
            EXPECT_NE(
                std::find(std::begin(tables::situations), std::end(tables::situations), situation),
                std::end(tables::situations))
                << situation;
        }
    }
}

TEST(PlainWords, SourcesAreNamedWithTheirBuilding) {
    const auto& one = picture::example("sunny-garage");
    EXPECT_EQ(sources_behind(subject_of(one), "garage"),
              (std::vector<std::string>{"Panels on the roof in Garage", "Battery in Garage"}));
    EXPECT_TRUE(sources_behind(subject_of(one), "house").size() == 2)
        << "what stands behind the house's board feeds it too";
}

TEST(PlainWords, BracesAreFilledAndOthersLeft) {
    EXPECT_EQ(filled("{a} and {b}, {c}{", {{"a", "one"}, {"b", "two {a}"}}),
              "one and two {a}, {c}{");
}

TEST(PlainWords, NoNoticeKeepsABraceUnfilled) {
    for (const char* name :
         {"demo", "sunny-garage", "tt-shed", "own-rod-greenhouse", "tn-s-workshop"}) {
        const Subject s = subject_of(picture::example(name));
        for (const char* list : {"excluded", "earth", "tripped", "ask", "button"}) {
            const auto lines = notices_for(s, list, runs_of(s));
            EXPECT_FALSE(lines.empty()) << name << list;
            for (const std::string& line : lines) {
                EXPECT_EQ(line.find_first_of("{}"), std::string::npos) << line;
            }
        }
    }
}

TEST(PlainWords, OnlyWordsThatOccurAreExplained) {
    const Subject s = subject_of(picture::example("demo"));
    const page::Table none = words_used(s, {page::Words{"nothing of the sort"}});
    EXPECT_TRUE(none.rows.empty());
    const page::Table one = words_used(s, {page::Words{"an RCD"}});
    ASSERT_EQ(one.rows.size(), 1u);
    EXPECT_EQ(one.rows.front().cells.front(), "RCD");
}

TEST(PlainWords, ListsAndCapitals) {
    EXPECT_EQ(listed({"a", "b", "c"}), "a, b and c");
    EXPECT_EQ(listed({}), "");
    EXPECT_EQ(capital("rod"), "Rod");
    EXPECT_EQ(capital("érable"), "érable");
}

}  // namespace
}  // namespace toft::paper
