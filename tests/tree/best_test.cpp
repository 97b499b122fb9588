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

/// Energy so dear that it decides; true when thicker cables are taken for it.
bool expect_same_over_years(unsigned seed) {
    const auto& shop = support::small_shop();
    price::Book book = shop.book;
    book.amounts[static_cast<std::size_t>(price::Item::energy_kwh)] = 30;
    const site::Job job = support::random_tree_job(seed);
    study::GroundMemo memo;
    Workplace at{shop.catalogue, book, job, {}, &memo};
    const Best cheap = cheapest(at, tree_of(at), {});
    at.over_years = true;
    const Best thrift = cheapest(at, tree_of(at), {});
    const auto tried = support::brute_cheapest(at, {});
    EXPECT_TRUE(thrift.proved) << seed;
    EXPECT_EQ(thrift.found.has_value(), tried.total < no_limit) << seed;
    if (!thrift.found) return false;
    EXPECT_NEAR(thrift.found->cost, tried.total, penny_part) << seed;
    EXPECT_NEAR(thrift.found->cost, thrift.found->total + thrift.found->lost, penny_part) << seed;
    EXPECT_LE(thrift.found->cost, cheap.found->total + cheap.found->lost + penny_part) << seed;
    return thrift.found->total > cheap.found->total;
}

TEST(Best, NoWayCostsLessWithTheEnergyItLosesOverTheYears) {
    int thicker = 0;
    for (unsigned seed = 21; seed < 33; ++seed) thicker += expect_same_over_years(seed);
    EXPECT_GT(thicker, 2);
}

TEST(Best, ElectrodesAreAskedForBuildingByBuilding) {
    const auto& shop = support::small_shop();
    const site::Job job = support::tree_job({support::the_house, 0});
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    const Tree tree = tree_of(at);
    const Best free = cheapest(at, tree, {});
    double least = no_limit;
    for (const bool first : {false, true}) {
        for (const bool second : {false, true}) {
            Asked asked;
            asked.own_electrode = {first, second};
            const Best best = cheapest(at, tree, asked);
            if (!best.found) continue;
            for (std::size_t i = 0; i < 2; ++i) {
                EXPECT_EQ(
                    best.found->runs[i].scheme.earthing == study::BuildingEarthing::own_electrode,
                    *asked.own_electrode[i]);
            }
            least = std::min(least, best.found->total);
        }
    }
    ASSERT_TRUE(free.found);
    EXPECT_NEAR(free.found->total, least, penny_part);
}

TEST(Best, WhoStopsItGetsTheBestSoFarAndABoundThatHolds) {
    const auto& shop = support::small_shop();
    int with_something = 0;
    for (unsigned seed = 21; seed < 27; ++seed) {
        const site::Job job = support::random_tree_job(seed);
        study::GroundMemo memo;
        const Workplace at{shop.catalogue, shop.book, job, {}, &memo};
        const Tree tree = tree_of(at);
        long asked = 0;
        Asked whole;
        whole.go_on = [&asked](const Progress&) { return ++asked > 0; };
        const Best best = cheapest(at, tree, whole);
        EXPECT_TRUE(best.proved);
        EXPECT_FALSE(best.stopped);
        const double least = best.found ? best.found->total : no_limit;
        for (const long after : {0L, asked / 3, asked - 2, asked - 1}) {
            long left = after;
            Asked stopping;
            stopping.go_on = [&](const Progress& progress) {
                EXPECT_LE(progress.at_least, least + penny_part) << seed;
                EXPECT_GE(progress.price, least - penny_part) << seed;
                return left-- > 0;
            };
            const Best some = cheapest(at, tree, stopping);
            EXPECT_TRUE(some.stopped) << seed << " after " << after;
            EXPECT_FALSE(some.proved) << seed << " after " << after;
            EXPECT_LE(some.at_least, least + penny_part) << seed << " after " << after;
            if (!some.found) continue;
            ++with_something;
            EXPECT_TRUE(some.found->sound);
            EXPECT_GE(some.found->total, least - penny_part) << seed << " after " << after;
        }
    }
    EXPECT_GT(with_something, 0);
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
