#include "codec/why.h"

#include "answer/why.h"
#include "codec/schema_walk.h"
#include "support/catalogue.h"
#include "support/examples.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::codec {
namespace {

Tree why_of(const std::string& name) {
    const site::Job job = support::example_job(name, support::catalogue());
    return Tree::parse(write_why(job.title, answer::walks_of(support::catalogue(), job)));
}

TEST(WhyText, HoldsEveryStepWithItsConsequencesAndWhoseWordItIs) {
    const Tree json = why_of("demo");
    EXPECT_EQ(json["format"], "toft-why/1");
    const Tree& walk = json["walks"][0];
    EXPECT_EQ(walk["building"], "studio");
    EXPECT_GT(walk["steps"].size(), 10u);
    for (const Tree& step : walk["steps"]) {
        EXPECT_EQ(step["consequences"].size(), 3u) << step["key"];
        EXPECT_FALSE(step["basis"]["source"].get<std::string>().empty()) << step["key"];
    }
    EXPECT_EQ(walk["choices"].size(), 3u);
    EXPECT_EQ(walk["choices"][2]["standing"], "ruled out");
}

TEST(WhyText, OnTtItHasTheTwoWaysOfThatSupply) {
    const Tree walk = why_of("tt-shed")["walks"][0];
    ASSERT_EQ(walk["choices"].size(), 2u);
    EXPECT_EQ(walk["choices"][0]["choice"], "own electrode");
    EXPECT_EQ(walk["choices"][1]["choice"], "shared electrode");
}

TEST(WhyText, TheSchemaKnowsEveryWordThatMayStandThere) {
    const Tree defs = schema_named("answer")["$defs"];
    const auto knows = [](const Tree& words, const std::string& word) {
        return std::find(words.begin(), words.end(), Tree(word)) != words.end();
    };
    const Tree& consequence = defs["step"]["properties"]["consequences"]["items"]["properties"];
    for (int i = 0; i < 5; ++i) {
        EXPECT_TRUE(knows(consequence["bearing"]["enum"],
                          walk::bearing_word(static_cast<walk::Bearing>(i))));
        EXPECT_TRUE(knows(defs["way"]["properties"]["standing"]["enum"],
                          walk::standing_word(static_cast<walk::Standing>(i))));
        EXPECT_TRUE(knows(defs["basis"]["properties"]["kind"]["enum"],
                          tables::authority_word(static_cast<tables::Authority>(i))));
    }
    for (std::size_t i = 0; i < walk::choice_count; ++i) {
        EXPECT_TRUE(knows(defs["choice"]["enum"], walk::choice_word(static_cast<walk::Choice>(i))));
    }
    for (int i = 0; i < 4; ++i) {
        EXPECT_TRUE(knows(defs["step"]["properties"]["known"]["enum"],
                          walk::known_word(static_cast<walk::Known>(i))));
    }
}

}  // namespace
}  // namespace toft::codec
