// The six messy jobs of examples/ and what docs/messy-jobs.md says of them. Whoever makes one of
// these fail corrects the page too.

#include "answer/find.h"
#include "support/judging.h"
#include "support/questions.h"
#include "walk/walking.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::trade {
namespace {

site::Job job_of(const char* name) { return support::example_job(name, support::catalogue()); }

answer::Answer answer_to(const site::Job& job) { return answer::design(support::question_of(job)); }

study::RunScheme scheme_of(const site::Job& job, const char* key) {
    const auto found = answer::find_scheme(support::question_of(job), key);
    EXPECT_TRUE(found) << key;
    return found.value_or(study::RunScheme{});
}

/// The rule that refuses the scheme of that key; empty where none does.
std::string refused_by(const site::Job& job, const char* key) {
    return support::first_failure(support::evaluated(job, scheme_of(job, key)));
}

rules::Verdict verdict_of(const site::Job& job, const char* rule, const char* key) {
    return support::finding_of(rule, job, scheme_of(job, key)).verdict;
}

rules::Verdict verdict_of(const answer::SchemeAnswer& scheme, const std::string& rule) {
    for (const answer::FindingAnswer& f : scheme.findings) {
        if (f.rule == rule) return f.verdict;
    }
    ADD_FAILURE() << scheme.key << " has no finding of " << rule;
    return rules::Verdict::fails;
}

/// The cheapest scheme shown of that earthing, cores and section on its longest stretch; null where
/// none is shown.
const answer::SchemeAnswer* cheapest(const answer::Answer& a, const char* earthing, int cores,
                                     double mm2) {
    for (const answer::SchemeAnswer& s : a.schemes) {
        if (s.building.earthing == earthing && s.run.cores == cores && s.run.live_mm2 == mm2) {
            return &s;
        }
    }
    return nullptr;
}

walk::Standing stands(const site::Job& job, walk::Choice choice) {
    return walk::standing_of(walk::walked(job), choice);
}

double dearer(const answer::SchemeAnswer& one, const answer::SchemeAnswer& than) {
    return one.price.total - than.price.total;
}

TEST(OfficeOnScrews, AnOwnElectrodeIsCheapestByLittleAndTheExportedTenAsksNothingOfTheGround) {
    site::Job job = job_of("screw-pile-office");
    job.wishes.offer = {"armoured XLPE copper", "unarmoured XLPE copper"};
    job.runs[0].device = site::NamedDevice{"BS 88-2", "", amperes(32)};  // as the whole shop gives
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    const answer::SchemeAnswer& first = a.schemes.front();
    EXPECT_EQ(first.building.earthing, "own electrode");
    EXPECT_EQ(first.run.live_mm2, 6);
    EXPECT_EQ(first.run.fed_from, "tails");
    EXPECT_EQ(verdict_of(first, "separation"), rules::Verdict::caution);
    const answer::SchemeAnswer* exported = cheapest(a, "supply earth", 3, 10);
    ASSERT_TRUE(exported);
    EXPECT_LT(dearer(*exported, first), 25);
    EXPECT_GT(exported->headroom, first.headroom + 0.05);
    EXPECT_EQ(verdict_of(*exported, "separation"), rules::Verdict::meets);
    EXPECT_EQ(stands(job, walk::Choice::supply_earth), walk::Standing::open);
    EXPECT_EQ(stands(job, walk::Choice::own_electrode), walk::Standing::judgement);
    for (const answer::SchemeAnswer& s : a.schemes)
        EXPECT_GE(s.run.live_mm2, 6) << "the owner's coil";
}

TEST(WeldingContainers, ThreeCoreTenWithACautionIsCheapest) {
    const site::Job job = job_of("welding-containers");
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    const answer::SchemeAnswer& first = a.schemes.front();
    EXPECT_EQ(&first, cheapest(a, "supply earth", 3, 10));
    EXPECT_EQ(first.run.device.curve, "B");
    EXPECT_EQ(first.run.device.rating_a, 40);
    EXPECT_EQ(verdict_of(first, "earthing-choice"), rules::Verdict::caution);
    const answer::SchemeAnswer* apart = cheapest(a, "own electrode", 2, 10);
    ASSERT_TRUE(apart);
    EXPECT_EQ(verdict_of(*apart, "earthing-choice"), rules::Verdict::meets);
    EXPECT_NEAR(dearer(*apart, first), 158, 1);
}

TEST(WeldingContainers, TwoCoreSixteenWithAnElectrodeOfItsOwnIsSoundBehindABreakerOfTypeBOnly) {
    const site::Job job = job_of("welding-containers");
    EXPECT_EQ(refused_by(job, "own-electrode/2x16/armour/B40-6kA/spare-way"), "");
    EXPECT_EQ(refused_by(job, "own-electrode/2x16/armour/88-2-fuse-40/tails"), "");
    for (const char* key : {"own-electrode/2x16/armour/C40-6kA/spare-way",
                            "own-electrode/2x25/armour/C40-6kA/spare-way"}) {
        EXPECT_EQ(verdict_of(job, "disconnection", key), rules::Verdict::fails) << key;
    }
    const auto drop = [&](const char* key) {
        return support::finding_of("voltage-drop", job, scheme_of(job, key)).use;
    };
    EXPECT_LT(drop("own-electrode/2x16/armour/B40-6kA/spare-way"), 0.5);
    EXPECT_GT(drop("own-electrode/2x10/armour/B40-6kA/spare-way"), 0.75);
}

TEST(HalfLaidNursery, FourThatIsLaidCarriesWhatWasStatedAndNoMore) {
    site::Job job = job_of("half-laid-nursery");
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    const answer::SchemeAnswer& first = a.schemes.front();
    EXPECT_EQ(first.run.live_mm2, 4);
    EXPECT_EQ(first.run.device.rating_a, 20);
    EXPECT_NEAR(first.run.figures.voltage_drop_percent, 2.96, 0.01);
    EXPECT_EQ(verdict_of(first, "suitability"), rules::Verdict::caution) << "a foot under a bed";
    double together = 0;
    for (const answer::CircuitAnswer& c : first.building.circuits) {
        if (c.name == "Sockets and kettle" || c.name == "Greenhouse heater") {
            together += c.design_current_a;
        }
    }
    EXPECT_GT(together, first.run.device.rating_a) << "kettle and heater, which no caution names";
    job.buildings[1].load = support::measured(amperes(17));
    EXPECT_FALSE(answer_to(job).sound) << "there is no ampere to spare";
}

TEST(OverheadStable, SixteenIsEnoughAndTwentyFiveHasSomeToSpare) {
    const site::Job job = job_of("overhead-stable");
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    EXPECT_EQ(&a.schemes.front(), cheapest(a, "shared electrode", 3, 16));
    EXPECT_NEAR(a.schemes.front().run.figures.voltage_drop_percent, 2.85, 0.01);
    const answer::SchemeAnswer* thicker = cheapest(a, "own electrode", 2, 25);
    ASSERT_TRUE(thicker);
    EXPECT_LT(thicker->run.figures.voltage_drop_percent, 2);
}

TEST(OverheadStable, AnElectrodeApartCostsLittleMoreAndKeepsTheHousesFaultsFromTheHorses) {
    const site::Job job = job_of("overhead-stable");
    const answer::Answer a = answer_to(job);
    const answer::SchemeAnswer& shared = a.schemes.front();
    const answer::SchemeAnswer* apart = cheapest(a, "own electrode", 2, 16);
    ASSERT_TRUE(apart);
    EXPECT_NEAR(dearer(*apart, shared), 51, 1);
    EXPECT_EQ(verdict_of(shared, "earthing-choice"), rules::Verdict::caution);
    EXPECT_EQ(verdict_of(*apart, "earthing-choice"), rules::Verdict::meets);
    EXPECT_EQ(stands(job, walk::Choice::shared_electrode), walk::Standing::judgement);
}

TEST(OverheadStable, TheHousesDelayedRcdIsNotTakenForTheRunsOwn) {
    const site::Job job = job_of("overhead-stable");
    const char* plain = "own-electrode/2x16/armour/B40-6kA/spare-way";
    EXPECT_EQ(verdict_of(job, "disconnection", plain), rules::Verdict::fails);
    for (const answer::SchemeAnswer& s : answer_to(job).schemes) {
        EXPECT_TRUE(s.run.rcd) << s.key;
        if (s.run.device.kind != "RCBO") continue;
        EXPECT_EQ(s.run.rcd->sensitivity_ma, 30) << s.key;
        EXPECT_EQ(verdict_of(s, "residual-current"), rules::Verdict::caution) << s.key;
    }
}

TEST(FarEngineeringShed, TwoCoreTwentyFiveOnItsOwnFrameAndNeverSixteen) {
    const site::Job job = job_of("far-engineering-shed");
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    EXPECT_EQ(&a.schemes.front(), cheapest(a, "own electrode", 2, 25));
    EXPECT_EQ(a.schemes.front().run.device.rating_a, 40);
    for (const answer::SchemeAnswer& s : a.schemes) EXPECT_NE(s.run.live_mm2, 16) << s.key;
    EXPECT_EQ(refused_by(job, "own-electrode/2x16/armour/B40-6kA/spare-way"), "voltage-drop");
    EXPECT_EQ(stands(job, walk::Choice::own_electrode), walk::Standing::open);
    EXPECT_EQ(stands(job, walk::Choice::supply_earth), walk::Standing::judgement);
}

TEST(FarEngineeringShed, SixtyAmperesAskForThirtyFive) {
    site::Job job = job_of("far-engineering-shed");
    job.buildings[1].load = support::measured(amperes(60));
    const answer::Answer a = answer_to(job);
    ASSERT_FALSE(a.schemes.empty());
    for (const answer::SchemeAnswer& s : a.schemes) EXPECT_GE(s.run.live_mm2, 35) << s.key;
}

TEST(SunnyGarage, TheOldFourIsTooThinAndTenTakesTheCautionOnTheRiseAway) {
    const site::Job job = job_of("sunny-garage");
    const answer::Answer a = answer_to(job);
    ASSERT_TRUE(a.sound);
    EXPECT_EQ(refused_by(job, "supply-earth/2x4/armour/B32-6kA/spare-way"), "voltage-drop");
    const answer::SchemeAnswer& first = a.schemes.front();
    EXPECT_EQ(&first, cheapest(a, "supply earth", 2, 6));
    EXPECT_EQ(verdict_of(first, "voltage-rise"), rules::Verdict::caution);
    const answer::SchemeAnswer* ten = cheapest(a, "supply earth", 2, 10);
    ASSERT_TRUE(ten);
    EXPECT_EQ(verdict_of(*ten, "voltage-rise"), rules::Verdict::meets);
    EXPECT_NEAR(dearer(*ten, first), 120, 1);
    EXPECT_EQ(a.demand.notice, "ask first");
}

}  // namespace
}  // namespace toft::trade
