// Chances against the share of the range that bisection finds, and against plain drawing of lots.

#include "tolerance/chance.h"

#include "base/root.h"
#include "tolerance/quantile.h"
#include "varying.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace toft::tolerance {
namespace {

constexpr double shortest = 20;
constexpr double longest = 90;

site::Job long_or_short(site::Spread spread) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(shortest), metres(longest));
    job.runs[0].legs[0].length.spread = spread;
    return job;
}

double length_that_drops_too_much() {
    return last_holding(shortest, longest, [](double length) {
        return holds(of_length(support::plain_job(), length), thin_scheme(), "voltage-drop");
    });
}

Chances chances_of(const site::Job& job, const Wish& wish = stated_only()) {
    const Place place = place_of(job);
    const auto varied = varied_in(place, wish);
    const study::RunScheme scheme = thin_scheme();
    return chances({place, varied, scheme}, none_sure(), wish);
}

TEST(Chance, OfOneEvenFigureIsTheShareOfItsRange) {
    const double edge = length_that_drops_too_much();
    ASSERT_GT(edge, shortest + 5);
    ASSERT_LT(edge, longest - 5);
    const Share share =
        chances_of(long_or_short(site::Spread::even)).by_rule[number_of_rule("voltage-drop")];
    EXPECT_NEAR(share.holds, (edge - shortest) / (longest - shortest), 1.0 / 512);
    EXPECT_GT(share.error, 0);
    EXPECT_LT(share.error, 0.01);
}

TEST(Chance, OfABellIsTheShareBelowTheEdge) {
    const double edge = length_that_drops_too_much();
    const double deviation = (longest - shortest) / 2 / bell_reach;
    const double cut = normal_share(-bell_reach);
    const double below = normal_share((edge - (shortest + longest) / 2) / deviation);
    const Share share =
        chances_of(long_or_short(site::Spread::bell)).by_rule[number_of_rule("voltage-drop")];
    EXPECT_NEAR(share.holds, (below - cut) / (1 - 2 * cut), 1.0 / 512);
}

site::Job of_many() {
    site::Job job = long_or_short(site::Spread::even);
    job.buildings[1].load = support::between(amperes(12), amperes(24));
    job.intake.ze = support::between(ohms(0.1), ohms(1.4));
    job.ground.temperature = support::between(celsius(5), celsius(25));
    return job;
}

TEST(Chance, OfManyFiguresIsThatOfPlainLots) {
    const site::Job job = of_many();
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    const Chances fast = chances_of(job);
    EXPECT_LT(fast.prepared, fast.samples);
    const std::size_t drop = number_of_rule("voltage-drop");
    const std::size_t clears = number_of_rule("disconnection");
    constexpr int lots = 3000;
    std::mt19937 random(42);
    std::uniform_real_distribution<double> any(0, 1);
    int drops = 0;
    int clear = 0;
    int all = 0;
    for (int n = 0; n < lots; ++n) {
        std::vector<double> values;
        for (const Varied& v : varied) {
            values.push_back(quantile(v.spread, v.low, v.high, any(random)));
        }
        const site::Job drawn = job_at(job, varied, values);
        const Standing standing = standing_in(place, drawn, thin_scheme());
        drops += holds(drawn, thin_scheme(), "voltage-drop") ? 1 : 0;
        clear += holds(drawn, thin_scheme(), "disconnection") ? 1 : 0;
        all += standing.sound ? 1 : 0;
    }
    // Four standard deviations of a binomial share (one lot in sixteen thousand goes beyond).
    const auto near = [&](const Share& share, int held) {
        const double room = 4 * std::sqrt(share.holds * (1 - share.holds) / lots) + share.error;
        EXPECT_NEAR(share.holds, static_cast<double>(held) / lots, room);
        EXPECT_GT(share.holds, 0.02);
        EXPECT_LT(share.holds, 0.98);
    };
    near(fast.by_rule[drop], drops);
    near(fast.by_rule[clears], clear);
    near(fast.all, all);
}

TEST(Chance, PreparingEachSampleAnewFindsTheSame) {
    const site::Job job = of_many();
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    const study::RunScheme scheme = thin_scheme();
    const Subject subject{place, varied, scheme};
    const Chances slow = chances_one_by_one(subject, none_sure(), 2048);
    const Chances fast = chances(subject, none_sure(), stated_only());
    EXPECT_EQ(slow.prepared, slow.samples);
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        EXPECT_NEAR(slow.by_rule[i].holds, fast.by_rule[i].holds,
                    slow.by_rule[i].error + fast.by_rule[i].error + 0.01);
    }
}

TEST(Chance, AllTogetherIsNoLikelierThanAnyAndNoLessThanTheirFailuresAddUpTo) {
    const Chances found = chances_of(of_many());
    double missing = 0;
    for (const Share& share : found.by_rule) {
        EXPECT_LE(found.all.holds, share.holds + 1e-12);
        missing += 1 - share.holds;
    }
    EXPECT_GE(found.all.holds, 1 - missing - 1e-12);
}

TEST(Chance, ARuleThatIsSureIsNotSampled) {
    const site::Job job = of_many();
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    const study::RunScheme scheme = thin_scheme();
    std::array<bool, rules::rule_count> sure{};
    sure.fill(true);
    const Chances found = chances({place, varied, scheme}, sure, stated_only());
    EXPECT_EQ(found.samples, 0u);
    EXPECT_EQ(found.all.holds, 1);
}

}  // namespace
}  // namespace toft::tolerance
