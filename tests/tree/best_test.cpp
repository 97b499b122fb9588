// The cheapest whole against the plain loop over every scheme of every run.

#include "tree/best.h"

#include "study/ground_memo.h"
#include "support/existing.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::tree {
namespace {

/// Whether a sound way was found.
bool expect_same(unsigned seed) {
    const auto& shop = support::small_shop();
    const site::Job job = support::random_tree_job(seed);
    study::GroundMemo memo;
    const Workplace at{shop.catalogue, shop.book, job, {}, &memo};
    const Best best = cheapest(at, tree_of(at), {});
    const auto tried = support::brute_cheapest(at, {});
    EXPECT_TRUE(best.proved) << seed;
    EXPECT_EQ(best.found.has_value(), tried.total < no_limit) << seed;
    if (!best.found) return false;
    EXPECT_NEAR(best.found->total, tried.total, penny_part) << seed;
    EXPECT_LE(best.at_least, best.found->total) << seed;
    return true;
}

TEST(Best, NoWayToBuildTheWholeIsCheaper) {
    int found = 0;
    for (unsigned seed = 21; seed < 45; ++seed) found += expect_same(seed);
    EXPECT_GT(found, 10);
}

TEST(Best, ABuildingBehindMayTakeItsOwnElectrodeSoThatTheRunBeforeNeedNotBondIt) {
    EXPECT_TRUE(expect_same(4));
}

/// A garage with a cable of its own, and behind it a gym that is added.
site::Job gym_behind_a_garage(double mm2, double gym_a) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.buildings[2].load = support::measured(amperes(gym_a));
    const auto& shop = support::small_shop();
    for (const tables::Cable& cable : shop.catalogue.cables) {
        if (cable.cores != 2 || cable.section != square_millimetres(mm2)) continue;
        job.runs[0].existing = support::sound_cable(cable, 20);
    }
    return job;
}

TEST(Best, AGaragesCableStaysWhereItBearsTheGymToo) {
    const auto& shop = support::small_shop();
    int stays = 0;
    int goes = 0;
    for (const auto& [mm2, gym_a] : {std::pair{6.0, 8.0}, {16.0, 8.0}, {6.0, 28.0}, {16.0, 28.0}}) {
        SCOPED_TRACE(mm2 * 1000 + gym_a);
        const site::Job job = gym_behind_a_garage(mm2, gym_a);
        ASSERT_TRUE(job.runs[0].existing);
        study::GroundMemo memo;
        const Workplace at{shop.catalogue, shop.book, job, {}, &memo};
        const Best best = cheapest(at, tree_of(at), {});
        ASSERT_TRUE(best.found);
        EXPECT_NEAR(best.found->total, support::brute_cheapest(at, {}).total, penny_part);
        const study::Laid laid = best.found->runs[0].scheme.first().laid;
        stays += laid == study::Laid::kept;
        goes += laid != study::Laid::kept;
        EXPECT_EQ(best.found->runs[1].scheme.first().laid, study::Laid::anew);
    }
    EXPECT_GT(stays, 0);
    EXPECT_GT(goes, 0);
}

}  // namespace
}  // namespace toft::tree
