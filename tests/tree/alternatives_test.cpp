// Ways worth showing beside the cheapest.

#include "tree/alternatives.h"

#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::tree {
namespace {

Alternatives ways_of(const site::Job& job) {
    const auto& shop = support::small_shop();
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    return alternatives(at, tree_of(at), {});
}

TEST(Alternatives, TheCheapestComesFirstAndNoneIsBeaten) {
    const Alternatives all = ways_of(support::tree_job({support::the_house, 0}));
    ASSERT_FALSE(all.ways.empty());
    EXPECT_EQ(all.ways.front().found->total, all.cheapest.found->total);
    for (const Way& a : all.ways) {
        for (const Way& b : all.ways) {
            if (&a == &b || b.merit == Merit::earth || b.merit == Merit::years) continue;
            EXPECT_FALSE(a.found->total <= b.found->total &&
                         a.found->headroom >= b.found->headroom &&
                         a.found->dependability >= b.found->dependability);
        }
    }
}

TEST(Alternatives, WhoPrefersHeadroomSeesTheMostOfItFirst) {
    site::Job job = support::tree_job({support::the_house, 0});
    job.wishes.prefer = site::Prefer::headroom;
    const Alternatives all = ways_of(job);
    ASSERT_GT(all.ways.size(), 1u);
    EXPECT_GT(all.ways.front().found->headroom, all.cheapest.found->headroom);
}

TEST(Alternatives, EveryCheapestOfAnEarthingIsThere) {
    const site::Job job = support::tree_job({support::the_house, 0});
    const auto& shop = support::small_shop();
    const Workplace at{shop.catalogue, shop.book, job, {}, nullptr};
    const Tree tree = tree_of(at);
    const Alternatives all = alternatives(at, tree, {});
    for (const bool own : {false, true}) {
        Asked asked;
        asked.own_electrode = {own, own};
        const Best best = cheapest(at, tree, asked);
        if (!best.found) continue;
        EXPECT_TRUE(std::any_of(all.ways.begin(), all.ways.end(), [&](const Way& way) {
            return std::all_of(way.found->runs.begin(), way.found->runs.end(),
                               [&](const FollowedRun& run) {
                                   return (run.scheme.earthing ==
                                           study::BuildingEarthing::own_electrode) == own;
                               }) &&
                   way.found->total <= best.found->total + penny_part;
        })) << own;
    }
}

TEST(Alternatives, OneThatNoOtherUndercutsOverTheYearsIsAmongThem) {
    const Alternatives all = ways_of(support::tree_job({support::the_house, 0}));
    ASSERT_TRUE(all.least_over_years);
    const auto over_years = [](const Way& way) { return way.found->total + way.found->lost; };
    for (const Way& way : all.ways) {
        EXPECT_GE(over_years(way), over_years(all.ways[*all.least_over_years]) - penny_part);
    }
}

TEST(Alternatives, WhatIsShownHasTheCheapestAndTheMostHeadroom) {
    const Alternatives all = ways_of(support::tree_job({support::the_house, 0}));
    ASSERT_GT(all.ways.size(), 4u);
    std::size_t most = 0;
    for (std::size_t i = 0; i < all.ways.size(); ++i) {
        if (all.ways[i].found->headroom > all.ways[most].found->headroom) most = i;
    }
    for (std::size_t room = 2; room <= all.ways.size(); ++room) {
        const auto places = shown(all, room);
        EXPECT_EQ(places.size(), room);
        EXPECT_EQ(places.front(), 0u);
        EXPECT_TRUE(std::is_sorted(places.begin(), places.end()));
        EXPECT_EQ(std::adjacent_find(places.begin(), places.end()), places.end());
    }
    const auto places = shown(all, all.ways.size() - 1);
    EXPECT_NE(std::find(places.begin(), places.end(), most), places.end());
}

}  // namespace
}  // namespace toft::tree
