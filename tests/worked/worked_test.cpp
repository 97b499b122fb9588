// A scheme worked out without working has the figures of the same with it.

#include "worked/worked.h"

#include "support/draws.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::worked {
namespace {

study::RunScheme plain_scheme() {
    return support::scheme(support::cable(3, 10), study::Protective::core_and_armour,
                           support::fuse(32));
}

Subject subject_of(const site::Job& job) {
    return {support::catalogue(), support::demo_book(), job, 0};
}

bool alike(double a, double b) {
    if (a == b || (std::isnan(a) && std::isnan(b))) return true;
    return std::fabs(a - b) <= 1e-12 * std::max(std::fabs(a), std::fabs(b));
}

RC_GTEST_PROP(Worked, EveryFigureIsTheSameOverEitherLedger, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const study::RunScheme scheme = support::any_scheme_of(job);
    const Worked<Silent> bare(subject_of(job), scheme);
    const Worked<Recording> recorded(subject_of(job), scheme);
    RC_ASSERT(bare.named().size() == recorded.named().size());
    for (std::size_t i = 0; i < bare.named().size(); ++i) {
        const auto& a = bare.named()[i];
        const auto& b = recorded.named()[i];
        RC_LOG() << a.name << ": " << a.value << ", " << b.value << "\n";
        RC_ASSERT(a.name == b.name);
        RC_ASSERT(std::string(a.unit) == b.unit);
        RC_ASSERT(alike(a.value, b.value));
    }
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        RC_ASSERT(bare.findings()[i].verdict == recorded.findings()[i].verdict);
    }
}

TEST(Worked, ASettingMadeReadyBeforeServesAsWell) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    const Worked<Silent> given(subject_of(job), setting, plain_scheme());
    const Worked<Silent> own(subject_of(job), plain_scheme());
    ASSERT_FALSE(own.named().empty());
    for (const auto& figure : own.named()) {
        EXPECT_TRUE(alike(given.value_of(figure.name), figure.value)) << figure.name;
    }
}

TEST(Worked, WhatWasBoughtBeforeIsNotPaidForAgain) {
    site::Job job = support::plain_job();
    job.intake.main_bonding = support::measured(square_millimetres(4));
    job.intake.earthing_conductor = support::measured(square_millimetres(4));
    const Worked<Silent> alone(subject_of(job), plain_scheme());
    Subject behind = subject_of(job);
    behind.bought_before = {price::Item::house_bonding_upgrade,
                            price::Item::earthing_conductor_upgrade};
    const Worked<Silent> after(behind, plain_scheme());
    EXPECT_GT(alone.value_of("price.put_right_first"), 0);
    EXPECT_LT(after.value_of("price.put_right_first"), alone.value_of("price.put_right_first"));
}

TEST(Worked, TheBillAddsUpToThePriceAndItsEndsLieAroundIt) {
    const site::Job job = support::plain_job();
    const Worked<Silent> worked(subject_of(job), plain_scheme());
    const auto summed = price::price_of_bill(worked.bill(), support::demo_book());
    EXPECT_EQ(summed.total.number(), worked.value_of("price"));
    EXPECT_LE(worked.price_low().total.number(), worked.value_of("price"));
    EXPECT_GE(worked.price_high().total.number(), worked.value_of("price"));
}

}  // namespace
}  // namespace toft::worked
