#include "search/sieve.h"

#include "support/catalogue.h"
#include "support/examples.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::search {
namespace {

/// The demo's live heads, and the route that they were judged on.
struct Sieved {
    site::Job job = support::example_job("demo", support::catalogue());
    Judge judge{support::catalogue(), job, 0, {}};
    Shop shop = shop_for(judge.setting());
    std::vector<Route> routes = routes_of(shop, judge.setting());
    HeadList heads{judge, support::demo_book(), heads_of(shop, judge.setting()), routes};
    PartFinding route = route_finding();

    PartFinding route_finding() const {
        PartFinding found = heads.live().front()->finding;
        found.headroom = 0.25;
        return found;
    }
    double total(const JudgedHead& head) const {
        return together(route.price, head.finding.price, support::demo_book()).total.number();
    }
};

TEST(Sieve, WhatItHoldsBackCostsMoreThanTheCeilingWhatItLetsThroughNoMore) {
    const Sieved s;
    Sieve sieve(s.heads, support::demo_book());
    const auto& live = s.heads.live();
    ASSERT_GT(live.size(), 10u);
    for (const JudgedHead* mark : {live.front(), live[live.size() / 2], live.back()}) {
        for (const double off : {-0.05, -0.001, 0.0, 0.001, 0.05}) {
            const double limit = s.total(*mark) + off;
            sieve.take_up(s.route);
            for (std::size_t i = 0; i < live.size(); ++i) {
                const Sifted sifted = sieve.sift(i, [&](double) { return limit; });
                const double total = s.total(*live[i]);
                if (sifted == Sifted::held_back) {
                    EXPECT_GT(total, limit);
                } else if (sifted == Sifted::let_through) {
                    EXPECT_LE(total, limit);
                } else {
                    EXPECT_NEAR(total, limit, 0.05);
                }
            }
        }
    }
}

TEST(Sieve, AsksOnceForEachHeadroomUntilToldToForget) {
    const Sieved s;
    Sieve sieve(s.heads, support::demo_book());
    sieve.take_up(s.route);
    std::vector<double> asked;
    const auto note = [&](double headroom) {
        asked.push_back(headroom);
        return 1e9;
    };
    for (std::size_t i = 0; i < s.heads.live().size(); ++i) {
        EXPECT_EQ(sieve.sift(i, note), Sifted::let_through);
    }
    const std::size_t once = asked.size();
    EXPECT_LT(once, s.heads.live().size());
    for (const double headroom : asked) EXPECT_LE(headroom, s.route.headroom);
    sieve.sift(0, note);
    EXPECT_EQ(asked.size(), once);
    sieve.forget();
    sieve.sift(0, note);
    EXPECT_EQ(asked.size(), once + 1);
}

TEST(Sieve, FromTheFirstHopelessHeadOnAllAreHeldBack) {
    const Sieved s;
    Sieve sieve(s.heads, support::demo_book());
    sieve.take_up(s.route);
    const auto& live = s.heads.live();
    const double limit = s.total(*live[live.size() / 2]);
    const auto ceiling = [&](double) { return limit; };
    const std::size_t first = sieve.first_hopeless(ceiling);
    EXPECT_GT(first, live.size() / 2);
    ASSERT_LT(first, live.size());
    for (std::size_t i = 0; i < live.size(); ++i) {
        EXPECT_EQ(sieve.sift(i, ceiling) == Sifted::held_back, i >= first);
    }
}

}  // namespace
}  // namespace toft::search
