#include "worked/longest.h"

#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <map>

namespace toft::worked {
namespace {

using rules::Verdict;

site::Job long_job(double factor, const site::Job& job) {
    site::Job longer = job;
    for (site::Leg& leg : longer.runs[0].legs) {
        leg.length.low = leg.length.low * factor;
        leg.length.high = leg.length.high * factor;
    }
    return longer;
}

std::map<std::string, double> longest(const site::Job& job, const study::RunScheme& scheme) {
    const Subject subject{support::catalogue(), support::demo_book(), job, {0, scheme.phases}};
    const auto list = longest_by_rule(subject, support::prepared(job), scheme);
    return {list.begin(), list.end()};
}

/// Just below each length its rule is met, just above it fails.
void expect_edges(const site::Job& job, const study::RunScheme& scheme) {
    const double length = support::prepared(job).length_most.number();
    const auto found = longest(job, scheme);
    EXPECT_FALSE(found.empty());
    for (const auto& [rule, metres] : found) {
        SCOPED_TRACE(rule);
        ASSERT_GE(metres, length);
        const auto verdict = [&](double m) {
            return support::finding_of(rule, long_job(m / length, job), scheme).verdict;
        };
        EXPECT_NE(verdict(metres * (1 - 1e-6)), Verdict::fails);
        const bool fails_beyond = verdict(metres * (1 + 1e-6)) == Verdict::fails;
        EXPECT_TRUE(fails_beyond || metres > 99 * length);
    }
}

TEST(Longest, JustBelowMeetsJustAboveFails) {
    const auto scheme =
        support::scheme(support::cable(2, 6), study::Protective::armour, support::fuse(32));
    expect_edges(support::plain_job(), scheme);
    site::Job legs =
        support::job_with_legs({support::plain_leg(site::LegMethod::clipped, 8),
                                support::plain_leg(site::LegMethod::buried_direct, 12)});
    expect_edges(legs, scheme);
    legs.runs[0].legs[1].length = support::between(metres(9), metres(12));
    expect_edges(legs, scheme);
}

TEST(Longest, OfEveryExamplesBestScheme) {
    for (const std::string& name : support::example_names()) {
        SCOPED_TRACE(name);
        const site::Job job = support::example_job(name, support::catalogue());
        const auto found = search::search(support::catalogue(), support::demo_book(), job, 0, {});
        if (found.any_sound()) expect_edges(job, found.contenders.front().scheme);
    }
}

TEST(Longest, OnlyRulesThatGetWorseWithLengthAndAreMet) {
    const auto scheme =
        support::scheme(support::cable(2, 6), study::Protective::armour, support::fuse(32));
    const auto found = longest(support::plain_job(), scheme);
    EXPECT_TRUE(found.count("voltage-drop"));
    EXPECT_TRUE(found.count("disconnection"));
    EXPECT_FALSE(found.count("current-rating"));
    const auto far = longest(long_job(10, support::plain_job()), scheme);
    EXPECT_FALSE(far.count("voltage-drop"));
}

TEST(Longest, DropOfAResistiveLoadGrowsInProportion) {
    const auto scheme =
        support::scheme(support::cable(2, 6), study::Protective::armour, support::fuse(32));
    const auto use = support::finding_of("voltage-drop", support::plain_job(), scheme).use;
    EXPECT_NEAR(longest(support::plain_job(), scheme)["voltage-drop"], 30 / use, 1e-5);
}

TEST(Longest, ALoadOfNothingMayGoAHundredTimesAsFar) {
    site::Job job = support::plain_job();
    job.buildings[1].load = support::measured(amperes(0.01));
    const auto scheme =
        support::scheme(support::cable(2, 6), study::Protective::armour, support::fuse(32));
    EXPECT_DOUBLE_EQ(longest(job, scheme)["voltage-drop"], 3000);
}

}  // namespace
}  // namespace toft::worked
