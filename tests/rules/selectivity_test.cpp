#include "rules/selectivity.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::rules {
namespace {

site::Job selectivity_job(const char* standard, double rating, double heater_w) {
    site::Job job = support::plain_job();
    job.intake.service_fuse = site::NamedDevice{standard, "", amperes(rating)};
    site::Circuit heater;
    heater.name = "heater";
    heater.load_w = support::measured(heater_w);
    job.buildings[1].circuits = {heater};
    return job;
}

Finding<Silent> selectivity_judged(const site::Job& job, const tables::Device& head) {
    const auto s = support::scheme(support::cable(3, 10), study::Protective::core, head);
    EXPECT_TRUE(support::recorded_alike("selectivity", job, s));
    return support::finding_of("selectivity", job, s);
}

TEST(SelectivityRule, IsMetWhereEachDeviceIsSelectiveOverTheNext) {
    site::Job job = selectivity_job("BS 88-2", 160, 1000);
    job.intake.pscc = support::measured(kiloamperes(1));
    job.intake.ze = support::measured(ohms(0.35));
    job.intake.line_neutral_loop = support::measured(ohms(0.35));
    const auto found = selectivity_judged(job, support::device("BS 88-2", "", 100));
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_GE(found.value, found.limit);
    EXPECT_LE(found.use, 1);
}

TEST(SelectivityRule, ALargerFaultThanItIsSelectiveToIsACaution) {
    const auto found =
        selectivity_judged(selectivity_job("BS 88-3", 80, 1000), support::breaker("B", 32));
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_LT(found.value, found.limit);
    EXPECT_NE(std::string(found.says).find("dark"), std::string::npos);
}

TEST(SelectivityRule, SaysWhatGoesDark) {
    // 100 A over 63 A is selective, 63 A over an RCBO is not up to its largest fault.
    const auto found = selectivity_judged(selectivity_job("BS 88-3", 100, 1000), support::fuse(63));
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_NE(std::string(found.says).find("walks to the house"), std::string::npos);
    EXPECT_EQ(std::string(found.says).find("operator"), std::string::npos);
}

TEST(SelectivityRule, WhatIsNotKnownIsACautionToo) {
    site::Job job = selectivity_job("BS 1361", 100, 1000);
    EXPECT_EQ(selectivity_judged(job, support::breaker("B", 32)).verdict, Verdict::caution);
    job.intake.service_fuse.reset();
    EXPECT_EQ(selectivity_judged(job, support::breaker("B", 32)).verdict, Verdict::caution);
    job.buildings[1].circuits.clear();
    EXPECT_EQ(selectivity_judged(job, support::breaker("B", 32)).verdict, Verdict::caution);
}

RC_GTEST_PROP(SelectivityRule, ARuleThatOnlyCautionsNeverFails, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto scheme =
        support::scheme(support::cable(3, 16), study::Protective::core, support::breaker("B", 40));
    RC_PRE(support::prepared(job).stretches.size() == 1u);
    RC_PRE(support::prepared(job).phases == 1);
    for (const Rule& rule : rulebook()) {
        if (!rule.info->only_cautions) continue;
        const Verdict verdict = support::finding_of(rule.info->name, job, scheme).verdict;
        RC_ASSERT(verdict == Verdict::meets || verdict == Verdict::caution);
    }
}

}  // namespace
}  // namespace toft::rules
