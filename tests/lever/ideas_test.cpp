#include "lever/ideas.h"

#include "lever/asking.h"
#include "site/validate.h"
#include "support/random_jobs.h"

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

}  // namespace
}  // namespace toft::lever
