#include "search/heads.h"

#include "support/catalogue.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace toft::search {
namespace {

/// A job's heads, judged on its first choice of phases.
struct Listed {
    explicit Listed(const site::Job& job)
        : judge(support::catalogue(), job, 0, {}),
          shop(shop_for(judge.setting())),
          routes(routes_of(shop, judge.setting())),
          heads(heads_of(shop, judge.setting())),
          list(judge, support::demo_book(), heads, routes) {}

    Judge judge;
    Shop shop;
    std::vector<Route> routes;
    std::vector<Head> heads;
    HeadList list;
};

TEST(HeadList, ALadderIsOneMakeInOnePlaceByRisingRating) {
    const site::Job job = support::plain_job();
    const Listed listed(job);
    std::map<std::size_t, std::map<std::size_t, const JudgedHead*>> ladders;
    for (const JudgedHead& head : listed.list.all()) {
        ASSERT_LT(head.ladder, listed.list.ladders());
        EXPECT_TRUE(ladders[head.ladder].emplace(head.rung, &head).second) << "a rung twice";
    }
    EXPECT_EQ(ladders.size(), listed.list.ladders());
    std::size_t longest = 0;
    for (const auto& [ladder, rungs] : ladders) {
        longest = std::max(longest, rungs.size());
        const Head& first = rungs.begin()->second->head;
        const Head* last = nullptr;
        for (const auto& [rung, judged] : rungs) {
            const Head& head = judged->head;
            EXPECT_EQ(head.fed_from, first.fed_from);
            EXPECT_EQ(head.rcd, first.rcd);
            EXPECT_EQ(head.device->standard, first.device->standard);
            EXPECT_EQ(head.device->curve, first.device->curve);
            EXPECT_EQ(head.device->kind, first.device->kind);
            EXPECT_EQ(head.device->breaking.value, first.device->breaking.value);
            EXPECT_EQ(head.device->i2.value, first.device->i2.value);
            if (last) {
                EXPECT_LT(last->device->rating, head.device->rating);
            }
            last = &head;
        }
    }
    EXPECT_GT(longest, 5u);
}

TEST(HeadList, TheRuleThatBlocksALadderGetsWorseWithTheRating) {
    const std::size_t moving = first_that_moves();
    ASSERT_LT(moving, rules::rule_count);
    EXPECT_EQ(rules::rulebook()[moving].info->larger, rules::Trend::worse);
    EXPECT_EQ(rules::rulebook()[moving].info->sees, rules::Sees::both);
}

TEST(HeadList, EveryHeadIsEitherLiveOrFallen) {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        const site::Job job = support::random_job(seed);
        const Listed listed(job);
        if (listed.routes.empty()) continue;
        ASSERT_EQ(listed.list.all().size(), listed.heads.size());
        long fallen = 0;
        for (const auto& f : listed.list.fallen()) fallen += f.count;
        EXPECT_EQ(static_cast<std::size_t>(fallen) + listed.list.live().size(),
                  listed.heads.size());
        double last = 0;
        for (const JudgedHead* head : listed.list.live()) {
            EXPECT_EQ(head->finding.first_hard, rules::rule_count);
            EXPECT_LE(last, head->finding.price.total.number()) << "the cheapest first";
            last = head->finding.price.total.number();
        }
        last = 0;
        for (const JudgedHead* head : listed.list.near_misses()) {
            EXPECT_EQ(head->finding.failures, 1u);
            EXPECT_LE(last, head->miss.use) << "the nearest first";
            last = head->miss.use;
        }
    }
}

TEST(HeadList, WhatAHeadIsJudgedByDoesNotSeeTheRoute) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Listed listed(job);
    std::vector<Route> others{listed.routes.back()};
    const HeadList elsewhere(listed.judge, support::demo_book(), listed.heads, others);
    for (std::size_t i = 0; i < listed.heads.size(); ++i) {
        const PartFinding& a = listed.list.all()[i].finding;
        const PartFinding& b = elsewhere.all()[i].finding;
        EXPECT_EQ(a.verdicts, b.verdicts);
        EXPECT_EQ(a.headroom, b.headroom);
        EXPECT_EQ(a.price.house_end.number(), b.price.house_end.number());
        EXPECT_EQ(a.price.remedies.number(), b.price.remedies.number());
    }
}

}  // namespace
}  // namespace toft::search
