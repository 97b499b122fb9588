#include "rules/breaking_capacity.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using support::measured;

/// A house with that fault current at the origin, line to neutral; to earth it is less.
site::Job house(double fault_ka) {
    site::Job job = support::plain_job();
    job.intake.pscc = measured(kiloamperes(fault_ka));
    return job;
}

study::RunScheme from(const tables::Device& device, site::FedFrom place) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, device);
    s.fed_from = place;
    return s;
}

Finding<Silent> breaking_capacity_judged(const site::Job& job, const study::RunScheme& scheme) {
    EXPECT_TRUE(support::recorded_alike("breaking-capacity", job, scheme));
    return support::finding_of("breaking-capacity", job, scheme);
}

TEST(BreakingCapacity, ABoardBehindTheRightFuseTakesSixteenKiloamperes) {
    const auto six = from(support::breaker("B", 32, 6), site::FedFrom::spare_way);
    EXPECT_EQ(breaking_capacity_judged(house(9), six).verdict, Verdict::meets);
    EXPECT_NE(std::string(breaking_capacity_judged(house(9), six).says).find("fuse"),
              std::string::npos);
    EXPECT_EQ(breaking_capacity_judged(house(16), six).verdict, Verdict::meets);  // a tie
    EXPECT_EQ(breaking_capacity_judged(house(16.1), six).verdict, Verdict::fails);
    const auto board = from(support::breaker("B", 32, 6), site::FedFrom::new_board);
    EXPECT_EQ(breaking_capacity_judged(house(16), board).verdict, Verdict::meets);
}

TEST(BreakingCapacity, WithoutThatFuseABreakerStandsAlone) {
    const auto six = from(support::breaker("B", 32, 6), site::FedFrom::spare_way);
    const auto ten = from(support::breaker("B", 32, 10), site::FedFrom::spare_way);
    for (const auto& fuse : {std::optional<site::NamedDevice>{},
                             std::optional<site::NamedDevice>{{"BS 88-2", "", amperes(100)}},
                             std::optional<site::NamedDevice>{{"BS 88-3", "", amperes(125)}}}) {
        site::Job job = house(6);
        job.intake.service_fuse = fuse;
        EXPECT_EQ(breaking_capacity_judged(job, six).verdict, Verdict::meets);  // a tie
        job.intake.pscc = measured(kiloamperes(6.1));
        EXPECT_EQ(breaking_capacity_judged(job, six).verdict, Verdict::fails);
        EXPECT_EQ(breaking_capacity_judged(job, ten).verdict, Verdict::meets);
    }
}

// A defect that is there already is put right first; it is no reason to find nothing.
TEST(BreakingCapacity, ABoardThatIsTooWeakIsPutRightFirstAndLendsNoWay) {
    site::Job job = house(5);
    job.intake.service_fuse = site::NamedDevice{"BS 88-2", "", amperes(100)};
    job.intake.board.breaking = measured(kiloamperes(3));
    const auto way =
        breaking_capacity_judged(job, from(support::breaker("B", 32, 6), site::FedFrom::spare_way));
    EXPECT_EQ(way.verdict, Verdict::fails);
    const auto tails = breaking_capacity_judged(job, from(support::fuse(32), site::FedFrom::tails));
    EXPECT_EQ(tails.verdict, Verdict::caution);
    EXPECT_STREQ(tails.remedy, "new board");
    job.intake.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(100)};
    EXPECT_EQ(breaking_capacity_judged(job, from(support::fuse(32), site::FedFrom::tails)).verdict,
              Verdict::meets);
}

TEST(BreakingCapacity, EitherHouseholdFuseBacksTheBoard) {
    const auto six = from(support::breaker("C", 20, 6), site::FedFrom::spare_way);
    for (const char* standard : {"BS 88-3", "BS 1361"}) {
        for (double rating : {60.0, 80.0, 100.0}) {
            site::Job job = house(12);
            job.intake.service_fuse = site::NamedDevice{standard, "", amperes(rating)};
            EXPECT_EQ(breaking_capacity_judged(job, six).verdict, Verdict::meets)
                << standard << rating;
        }
    }
}

TEST(BreakingCapacity, ASwitchFuseOnTheTailsIsNoBoard) {
    const auto fuse = from(support::fuse(32), site::FedFrom::tails);
    EXPECT_EQ(breaking_capacity_judged(house(16), fuse).verdict, Verdict::meets);
    EXPECT_EQ(breaking_capacity_judged(house(17), fuse).verdict, Verdict::fails);
    EXPECT_STREQ(breaking_capacity_judged(house(16), fuse).says, "");
}

TEST(BreakingCapacity, TheLargerOfTheTwoFaultsCounts) {
    site::Job job = house(1);
    job.intake.ze = measured(ohms(0.03));  // 8433 A to earth
    const auto found = breaking_capacity_judged(job, from(support::fuse(32), site::FedFrom::tails));
    EXPECT_NEAR(found.value, 1.1 * 230 / 0.03, 1e-6);
}

TEST(BreakingCapacity, WhatNobodyStatedIsTakenAtItsWorst) {
    site::Job job = support::plain_job();
    job.intake.ze = {};
    job.intake.line_neutral_loop = {};
    job.intake.service_fuse = {};
    const auto found = breaking_capacity_judged(
        job, from(support::breaker("B", 32, 10), site::FedFrom::spare_way));
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_GT(found.value, 15900);
    EXPECT_LE(found.value, 16000);
}

}  // namespace
}  // namespace toft::rules
