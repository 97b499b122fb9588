#include "lever/ideas.h"

#include "lever/asking.h"
#include "site/validate.h"
#include "support/random_jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::lever {
namespace {

TEST(Ideas, EveryChangeHasItsRowAndEveryRowComesUp) {
    std::set<std::string> seen;
    for (unsigned seed = 1; seed <= 300; ++seed) {
        for (site::Job job : {support::random_job(seed), support::random_demand_job(seed)}) {
            if (seed % 3 == 0) job.wishes.offer = {"armoured XLPE copper"};
            if (seed % 5 == 0) job.wishes.drop_run = support::measured(2.5);
            if (seed % 7 == 0) job.wishes.devices = {"BS 88-3"};
            if (seed % 4 == 0) job.buildings[0].origin = true;
            job.buildings[1].at_x_m = 1;
            job.buildings[1].at_y_m = 1;
            for (const Change& change : all_changes({support::catalogue(), job})) {
                seen.insert(change.key);
                EXPECT_NE(tables::find_lever(support::catalogue().levers, change.key), nullptr)
                    << change.key;
            }
        }
    }
    for (const tables::LeverRow& row : support::catalogue().levers.rows) {
        EXPECT_EQ(seen.count(row.key), 1u) << row.key << " never came up";
    }
}

TEST(Ideas, TheOldJobStaysAsItWas) {
    const site::Job job = support::random_job(5);
    const std::size_t legs = job.runs[0].legs.size();
    const auto before = job.runs[0].legs[0].method;
    all_changes({support::catalogue(), job});
    EXPECT_EQ(job.runs[0].legs.size(), legs);
    EXPECT_EQ(job.runs[0].legs[0].method, before);
}

TEST(Ideas, AJobChangedOnceIsStillAJob) {
    int faults = 0;
    int changes = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        const site::Job job = support::random_job(seed);
        for (const Change& change : all_changes({support::catalogue(), job})) {
            ++changes;
            faults += !site::validate(change.job).empty();
        }
    }
    EXPECT_GT(changes, 200);
    EXPECT_EQ(faults, 0);
}

TEST(Ideas, OfSeveralRunsTheHouseAndTheWishesAreLookedAtOnce) {
    const site::Job job = support::tree_job({support::the_house, 0});
    std::multiset<std::string> keys;
    for (const Change& change : all_changes_of(support::catalogue(), job)) {
        if (change.runs.empty()) keys.insert(change.key);
        if (change.key == "direct" || change.key == "duct") {
            keys.insert(change.key + std::to_string(change.runs.front()));
        }
    }
    EXPECT_EQ(keys.count("duct0"), 1u);
    EXPECT_EQ(keys.count("duct1"), 1u);
    for (const std::string& key : keys) EXPECT_EQ(keys.count(key), 1u) << key;
}

TEST(Ideas, ChangesOfOneKindMadeTogetherAreAllMade) {
    const site::Job job = support::tree_job({support::the_house, 0, 1});
    const Changes all = all_changes_of(support::catalogue(), job);
    std::vector<const Change*> ducts;
    for (const Change& change : all) {
        if (change.key == "duct") ducts.push_back(&change);
    }
    const Change together = made_together(support::catalogue(), job, ducts);
    EXPECT_EQ(together.count, 3u);
    EXPECT_EQ(together.runs, (std::vector<std::size_t>{0, 1, 2}));
    for (const site::Run& run : together.job.runs) {
        EXPECT_EQ(run.legs[0].method, site::LegMethod::buried_in_duct);
    }
}

}  // namespace
}  // namespace toft::lever
