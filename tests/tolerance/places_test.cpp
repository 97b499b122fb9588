#include "tolerance/places.h"

#include "support/judging.h"
#include "support/random_jobs.h"
#include "varying.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tolerance {
namespace {

TEST(Places, NoneIsNamedTwice) {
    auto setting = support::prepared(support::plain_job());
    const auto places = places_in(setting);
    EXPECT_EQ(std::set<double*>(places.begin(), places.end()).size(), places.size());
    EXPECT_GT(places.size(), 60u);
}

TEST(Places, ASettingWithAnothersFiguresIsJudgedAsTheOther) {
    const site::Job one = support::plain_job();
    site::Job other = of_length(one, 61);
    other.intake.ze = support::measured(ohms(0.33));
    other.intake.line_neutral_loop = support::measured(ohms(0.29));
    other.buildings[1].load = support::measured(amperes(17));
    other.ground.temperature = support::measured(celsius(22));
    auto setting = support::prepared(one);
    auto wanted = support::prepared(other);
    const auto into = places_in(setting);
    const auto from = places_in(wanted);
    ASSERT_EQ(into.size(), from.size());
    for (std::size_t i = 0; i < into.size(); ++i) *into[i] = *from[i];
    search::Evaluation a;
    search::Evaluation b;
    search::evaluate(setting, thin_scheme(), a);
    search::evaluate(wanted, thin_scheme(), b);
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        EXPECT_EQ(a.findings[i].use, b.findings[i].use) << a.findings[i].rule->name;
        EXPECT_EQ(a.findings[i].verdict, b.findings[i].verdict) << a.findings[i].rule->name;
    }
    EXPECT_NE(a.headroom, support::evaluated(one, thin_scheme()).headroom);
}

}  // namespace
}  // namespace toft::tolerance
