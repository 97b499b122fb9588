// Why a client is offered one choice or none.

#include "client/client_reasons.h"

#include "paper/written.h"
#include "walk/choice.h"

namespace toft::paper {
namespace {

std::string words_in(const std::vector<page::Block>& blocks) {
    std::string all;
    for (const page::Block& block : blocks) all += words_of(block) + "\n";
    return all;
}

TEST(ClientReasons, TheRiskIsThatOfTheWayTheBuildingIsEarthed) {
    const auto& one = picture::example("own-rod-greenhouse");
    const std::string risk = residual_risk(one.answer, one.answer.schemes.front());
    ASSERT_NE(risk, "");
    bool told = false;
    for (const walk::Way& way : one.answer.walks.front().ways) {
        if (way.choice == walk::Choice::own_electrode) told = way.residual_risk == risk;
    }
    EXPECT_TRUE(told);
}

TEST(ClientReasons, ARiskThatNobodyArguedIsNotPassedOverInSilence) {
    answer::SchemeAnswer part;
    part.building.id = "nowhere";
    EXPECT_NE(residual_risk(picture::example("demo").answer, part).find("ask your electrician"),
              std::string::npos);
}

TEST(ClientReasons, ARodSharedBehindAnotherBuildingHasTheRisksOfARod) {
    const auto& one = picture::example("garage-gym-stable");
    bool met = false;
    for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
        for (const answer::SchemeAnswer& part : scheme.further) {
            if (part.building.earthing != "shared electrode") continue;
            met = true;
            EXPECT_NE(residual_risk(one.answer, part).find("electrode"), std::string::npos);
        }
    }
    EXPECT_TRUE(met);
}

TEST(ClientReasons, EveryReasonThatWaysFellByIsTold) {
    const auto& one = picture::example("caravan-no-scheme");
    ASSERT_FALSE(one.answer.dropped.empty());
    const std::string all = words_in(nothing_sound(subject_of(one)));
    for (const answer::DroppedAnswer& dropped : one.answer.dropped) {
        EXPECT_NE(all.find(dropped.title.substr(1, 40)), std::string::npos) << dropped.title;
    }
    EXPECT_NE(all.find("none is sound"), std::string::npos);
    EXPECT_NE(all.find("insulating section"), std::string::npos);
}

TEST(ClientReasons, ARuleThatWasNotMetIsNotSaidAsNotSo) {
    const auto& one = picture::example("demo");
    const std::string all = words_in(only_one(subject_of(one)));
    EXPECT_EQ(all.find("not so:"), std::string::npos);
    EXPECT_NE(all.find("This could not be met: "), std::string::npos);
    std::string ways = std::to_string(one.answer.search.candidates);
    ASSERT_EQ(ways.size(), 6u);
    EXPECT_NE(all.find(ways.insert(3, ",") + " ways"), std::string::npos);
}

}  // namespace
}  // namespace toft::paper
