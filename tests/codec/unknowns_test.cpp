#include "codec/unknowns.h"

#include "codec/fits.h"
#include "support/catalogue.h"
#include "support/examples.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

Json asked(const char* name) {
    const site::Job job = support::example_job(name, support::catalogue());
    return Json::parse(write_ask(answer::ask(support::question_of(job))));
}

TEST(AskText, ThreeFactsStillGiveAListToGoBy) {
    const Json json = asked("three-facts");
    EXPECT_EQ(json["format"], "toft-ask/1");
    EXPECT_EQ(json["sound"], false) << "a rule is not known, whatever is built";
    EXPECT_EQ(json["conditional"], true);
    ASSERT_GT(json["find_out"].size(), 2u);
    EXPECT_EQ(json["find_out"][0]["fact"], "/runs/0/legs/0/depth_m");
    EXPECT_EQ(json["find_out"][1]["fact"], "/intake/demand_a");
    std::size_t hangs = 0;
    for (const Json& u : json["find_out"]) {
        EXPECT_EQ(u["ask"], true);
        EXPECT_FALSE(u["question"].get<std::string>().empty());
        EXPECT_FALSE(u["how"].get<std::string>().empty());
        // Neither scheme nor price hangs on what nobody said: the rule does.
        const bool unsaid =
            u["why"].get<std::string>().find("rule is not known") != std::string::npos;
        EXPECT_EQ(u["hangs"].get<std::string>().empty(), unsaid);
        EXPECT_EQ(u["answers"].empty(), unsaid);
        hangs += unsaid ? 0 : 1;
    }
    EXPECT_EQ(json["find_out"].size() - hangs, 2u);
    for (const Json& u : json["leave"]) EXPECT_EQ(u["ask"], false);
    EXPECT_FALSE(json["cautions"].empty());
}

TEST(AskText, IsWhatTheAnswerSaysOfUnknowns) {
    const site::Job job = support::example_job("three-phase-barn", support::catalogue());
    const answer::Answer a = answer::design(support::question_of(job));
    const Json json = asked("three-phase-barn");
    Json all = json["find_out"];
    for (const Json& u : json["leave"]) all.push_back(u);
    ASSERT_EQ(all.size(), a.unknowns.size());
    for (std::size_t i = 0; i < all.size(); ++i) EXPECT_EQ(all[i], unknown_json(a.unknowns[i]));
}

TEST(AskText, FitsItsSchemaWhichKnowsUnknownsAsTheAnswerDoes) {
    const site::Job job = support::example_job("three-facts", support::catalogue());
    expect_fits("ask", write_ask(answer::ask(support::question_of(job))));
    EXPECT_EQ(schema_named("ask")["$defs"]["unknown"], schema_named("answer")["$defs"]["unknown"]);
}

TEST(AskText, APieceWithoutASoundSchemeHasNoPrice) {
    answer::UnknownAnswer u;
    u.pieces.push_back({0, 1, false, "", "", 0, 0});
    const Json json = unknown_json(u);
    EXPECT_TRUE(json["answers"][0]["price"].is_null());
    EXPECT_TRUE(json["may_save"].is_null());
}

}  // namespace
}  // namespace toft::codec
