// Metalwork in the outbuilding: the bond it asks for decides the cable, whatever the load.

#include "answer/answer.h"
#include "support/brute_force.h"
#include "support/catalogue.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::trade {
namespace {

using study::BuildingEarthing;
using study::Protective;
using support::measured;

/// Water by a metal pipe from the house, where it is bonded: an own electrode is not possible.
site::Job piped(site::Earthing system, double load_a) {
    site::Job job = support::plain_job();
    job.intake.earthing = system;
    job.buildings[1].load = measured(amperes(load_a));
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.comes_from = site::ComesFrom::house;
    pipe.insulating_section = site::Answer::no;
    pipe.bonded_at_house = site::Answer::yes;
    job.buildings[1].metalwork = {pipe};
    return job;
}

search::Result searched(const site::Job& job) {
    return search::search(support::catalogue(), support::demo_book(), job, 0, {});
}

/// Every sound scheme, worth showing or not.
std::vector<support::BruteSound> all_sound(const site::Job& job) {
    return support::BruteForce(support::catalogue(), support::demo_book(), job).run().sound;
}

/// Copper that one stretch is worth as a bond: its best single conductor.
double bond_of(const study::Stretch& s) {
    double best = 0;
    if (study::core_serves(s.protective)) best = s.cable->cpc.number();
    if (s.separate) best = std::max(best, s.separate->section.number());
    if (study::armour_serves(s.protective)) {
        const double armour = s.cable->r20.value / s.cable->armour_r20.value;
        best = std::max(best, s.parallel * s.cable->section.number() * armour);
    }
    return best;
}

TEST(Metalwork, TheUsualAnswerIsThreeCoreTenWithTheArmourEarthedToo) {
    // A very small load may be cheaper with 1.5 mm2 and a 16 mm2 conductor beside it in the trench.
    for (double load : {16.0, 20.0, 32.0, 40.0}) {
        const auto found = searched(piped(site::Earthing::tn_c_s, load));
        ASSERT_TRUE(found.any_sound()) << load;
        const study::RunScheme& best = found.contenders.front().scheme;
        EXPECT_EQ(best.first().cable->cores, 3) << load;
        EXPECT_DOUBLE_EQ(best.first().cable->section.number(), 10) << load;
        EXPECT_EQ(best.first().protective, Protective::core_and_armour) << load;
        EXPECT_EQ(best.earthing, BuildingEarthing::supply_earth) << load;
        EXPECT_TRUE(best.armour_at_far_end()) << load;
    }
}

TEST(Metalwork, NoSchemeBondsWithLessThanTenOnACombinedSupplyOrSixOnASeparateOne) {
    struct Row {
        site::Earthing system;
        double least;
    };
    for (const Row& row : {Row{site::Earthing::tn_c_s, 10}, Row{site::Earthing::tn_s, 6}}) {
        for (double load : {2.0, 20.0}) {
            site::Job job = piped(row.system, load);
            job.intake.earthing_conductor = measured(square_millimetres(10));
            job.runs[0].fed_from = site::FedFrom::tails;
            const auto found = all_sound(job);
            ASSERT_FALSE(found.empty());
            double smallest = 1e9;
            for (const support::BruteSound& c : found) {
                EXPECT_EQ(c.scheme.earthing, BuildingEarthing::supply_earth) << c.key;
                smallest = std::min(smallest, bond_of(c.scheme.first()));
            }
            EXPECT_DOUBLE_EQ(smallest, row.least) << site::word(row.system) << " " << load;
        }
    }
}

TEST(Metalwork, NoTwoCoreArmourUpToSeventyIsABond) {
    site::Job job = piped(site::Earthing::tn_c_s, 20);
    job.runs[0].fed_from = site::FedFrom::tails;
    bool ninety_five = false;
    for (const support::BruteSound& c : all_sound(job)) {
        if (c.scheme.first().protective != Protective::armour) continue;
        EXPECT_DOUBLE_EQ(c.scheme.first().cable->section.number(), 95) << c.key;
        ninety_five = true;
    }
    EXPECT_TRUE(ninety_five);
}

TEST(Metalwork, APipeThatDoesNotBridgeLeavesTheChoiceOfARod) {
    site::Job job = piped(site::Earthing::tn_c_s, 20);
    job.buildings[1].metalwork[0].comes_from = site::ComesFrom::ground;
    job.buildings[1].metalwork[0].bonded_at_house = site::Answer::no;
    bool own = false;
    for (const search::Contender& c : searched(job).contenders) {
        own = own || c.scheme.earthing == BuildingEarthing::own_electrode;
    }
    EXPECT_TRUE(own);
}

TEST(Metalwork, TakingItAllAwayRemovesTheBondAndMakesTheJobNoDearer) {
    for (const char* name : {"demo", "tn-s-workshop", "tn-c-s-office", "steel-container"}) {
        const site::Job job = support::example_job(name, support::catalogue());
        site::Job bare = job;
        bare.buildings[1].metalwork.clear();
        bare.buildings[1].construction = site::Construction::timber;
        const auto with =
            answer::design({support::catalogue(), support::demo_book(), job, false, nullptr});
        const auto without =
            answer::design({support::catalogue(), support::demo_book(), bare, false, nullptr});
        ASSERT_TRUE(without.sound) << name;
        for (const answer::SchemeAnswer& s : without.schemes) {
            EXPECT_TRUE(s.building.bonding.empty()) << name << " " << s.key;
            EXPECT_FALSE(s.run.bond_equivalent_mm2) << name << " " << s.key;
        }
        if (!with.sound) continue;
        EXPECT_LE(without.schemes.front().price.total, with.schemes.front().price.total) << name;
    }
}

}  // namespace
}  // namespace toft::trade
