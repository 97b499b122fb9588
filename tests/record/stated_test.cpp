// What the job states, as a list.

#include "record/stated.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

#include <optional>

namespace toft::paper {
namespace {

std::optional<StatedFact> fact_in(const std::vector<FactGroup>& groups, const std::string& name) {
    for (const FactGroup& group : groups) {
        for (const StatedFact& fact : group.facts) {
            if (fact.fact == name) return fact;
        }
    }
    return std::nullopt;
}

TEST(Facts, SayHowEachIsKnown) {
    site::Job job;
    job.intake.ze = {true, ohms(0.2), ohms(0.35), site::Standing::declared};
    const auto groups = facts_of(job);
    const auto ze = fact_in(groups, "external loop Ze");
    ASSERT_TRUE(ze);
    EXPECT_EQ(ze->value, "0.2 to 0.35 Ω");
    EXPECT_EQ(ze->known, "declared");
}

TEST(Facts, WhatIsOpenIsSaidToBeOpenAndNeverLeftOut) {
    const auto groups = facts_of(site::Job{});
    for (const char* name : {"external loop Ze", "prospective fault current", "operator's fuse",
                             "largest demand of the house today", "main bonding at the house"}) {
        const auto fact = fact_in(groups, name);
        ASSERT_TRUE(fact) << name;
        EXPECT_EQ(fact->value, "not stated") << name;
        EXPECT_EQ(fact->known, "taken at its worse end") << name;
    }
}

TEST(Facts, NoMetalSurveyedIsNotTheSameAsNoMetal) {
    site::Job job;
    job.buildings.push_back({});
    job.buildings.back().id = "shed";
    const char* name = "metal that enters or stands near";
    EXPECT_EQ(fact_in(facts_of(job), name)->value, "not stated");
    job.buildings.back().metalwork_surveyed = true;
    EXPECT_EQ(fact_in(facts_of(job), name)->value, "none");
}

TEST(Facts, EveryLegAndCircuitOfAJobIsThere) {
    const site::Job& job = made("garage-gym-stable").job;
    const auto groups = facts_of(job);
    std::size_t legs = 0, circuits = 0, wanted_legs = 0, wanted_circuits = 0;
    for (const FactGroup& group : groups) {
        for (const StatedFact& fact : group.facts) {
            legs += fact.fact.rfind("leg ", 0) == 0;
            circuits += fact.fact.rfind("circuit ", 0) == 0;
        }
    }
    for (const site::Run& run : job.runs) wanted_legs += run.legs.size();
    for (const site::Building& b : job.buildings) {
        if (!b.origin) wanted_circuits += b.circuits.size();
    }
    EXPECT_EQ(legs, wanted_legs);
    EXPECT_EQ(circuits, wanted_circuits);
}

TEST(Facts, APowerFactorIsNotSaidToBeMeasured) {
    const auto fact = fact_in(facts_of(made("demo").job), "– power factor");
    ASSERT_TRUE(fact);
    EXPECT_EQ(fact->known, "stated");
}

}  // namespace
}  // namespace toft::paper
