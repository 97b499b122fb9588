#include "codec/guard_tree.h"

#include "codec/designing.h"
#include "codec/schema_walk.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::codec {
namespace {

TEST(GuardTree, EachCircuitHasItsReasonsItsTypeAndItsLeakage) {
    const answer::Answer answer = designed(demo());
    const Json json = residual_json(answer.schemes.at(0).guard);
    ASSERT_EQ(json.size(), demo()["buildings"][1]["circuits"].size());
    for (const Json& circuit : json) {
        EXPECT_EQ(circuit["fitted_ma"], 30);
        EXPECT_FALSE(circuit["reasons"].empty());
        EXPECT_FALSE(circuit["reasons"][0]["basis"]["source"].get<std::string>().empty());
        EXPECT_LE(circuit["leakage_ma"]["low"].get<double>(),
                  circuit["leakage_ma"]["high"].get<double>());
        EXPECT_NEAR(circuit["leakage_ma"]["allowed"].get<double>(), 9, 1e-9);
    }
}

TEST(GuardTree, WhatGoesDarkIsToldByNameAndSurety) {
    const answer::Answer answer = designed(demo());
    const Json json = dark_json(answer.schemes.at(0).guard);
    EXPECT_EQ(json["events"].back()["fault"], "loss of the supply");
    EXPECT_EQ(json["events"].back()["dark"]["surely"].size(), json["parts"].size());
    const Json& first = json["events"][0];
    EXPECT_EQ(first["circuit"], json["parts"][0]["name"]);
    EXPECT_EQ(first["dark"]["surely"], Json::array({json["parts"][0]["name"]}));
}

TEST(GuardTree, TheSchemasKnowEveryFaultThatMayStandThere) {
    for (const char* name : {"answer", "dark"}) {
        const Tree defs = schema_named(name)["$defs"];
        const Tree& events = defs["dark"]["properties"]["events"]["items"]["properties"];
        const Tree& words = events["fault"]["enum"];
        const int last = static_cast<int>(guard::Trouble::loss);
        EXPECT_EQ(words.size(), static_cast<std::size_t>(last + 1));
        for (int i = 0; i <= last; ++i) {
            const Tree word = guard::trouble_word(static_cast<guard::Trouble>(i));
            EXPECT_NE(std::find(words.begin(), words.end(), word), words.end()) << word;
        }
    }
    EXPECT_EQ(schema_named("answer")["$defs"]["dark"], schema_named("dark")["$defs"]["dark"]);
    EXPECT_EQ(schema_named("answer")["$defs"]["residual"],
              schema_named("dark")["$defs"]["residual"]);
}

}  // namespace
}  // namespace toft::codec
