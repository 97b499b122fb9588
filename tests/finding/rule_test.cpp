#include "finding/rule.h"

#include "finding/judge.h"
#include "rules/overload.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

TEST(Rule, WordsOfVerdictsAndTrends) {
    EXPECT_STREQ(verdict_word(Verdict::meets), "meets");
    EXPECT_STREQ(verdict_word(Verdict::caution), "caution");
    EXPECT_STREQ(verdict_word(Verdict::not_known), "not known");
    EXPECT_STREQ(verdict_word(Verdict::fails), "fails");
    EXPECT_STREQ(trend_word(Trend::none), "no effect");
    EXPECT_STREQ(trend_word(Trend::worse), "worse");
    EXPECT_STREQ(trend_word(Trend::better), "better");
    EXPECT_STREQ(trend_word(Trend::either), "either way");
}

TEST(Rule, TheHeavierVerdictIsTheOneToWorryAbout) {
    EXPECT_EQ(heavier(Verdict::meets, Verdict::caution), Verdict::caution);
    EXPECT_EQ(heavier(Verdict::not_known, Verdict::caution), Verdict::not_known);
    EXPECT_EQ(heavier(Verdict::fails, Verdict::not_known), Verdict::fails);
}

Verdict under(double value, double limit) {
    Silent silent;
    return keeps_under(silent, overload_rule, ohms(value), ohms(limit)).verdict;
}

Verdict at_least(double value, double limit) {
    Silent silent;
    return reaches(silent, overload_rule, metres(value), metres(limit)).verdict;
}

TEST(Rule, ATieIsMet) {
    EXPECT_EQ(under(1.5, 1.5), Verdict::meets);
    EXPECT_EQ(under(1.5 * (1 + 1e-10), 1.5), Verdict::meets);
    EXPECT_EQ(under(1.5 * (1 + 1e-8), 1.5), Verdict::fails);
    EXPECT_EQ(at_least(2.5, 2.5), Verdict::meets);
    EXPECT_EQ(at_least(2.5 * (1 - 1e-10), 2.5), Verdict::meets);
    EXPECT_EQ(at_least(2.5 * (1 - 1e-8), 2.5), Verdict::fails);
}

TEST(Rule, UseIsTheShareOfTheLimit) {
    Silent silent;
    const auto f = keeps_under(silent, overload_rule, amperes(24), amperes(32));
    EXPECT_TRUE(f.limited);
    EXPECT_FALSE(f.at_least);
    EXPECT_DOUBLE_EQ(f.use, 0.75);
    EXPECT_DOUBLE_EQ(f.value, 24);
    EXPECT_DOUBLE_EQ(f.limit, 32);
}

TEST(Rule, WhereTheLimitMustBeReachedUseTurnsRound) {
    Silent silent;
    const auto f = reaches(silent, overload_rule, metres(10), metres(2.5));
    EXPECT_TRUE(f.at_least);
    EXPECT_DOUBLE_EQ(f.use, 0.25);
    EXPECT_DOUBLE_EQ(f.value, 10);
    EXPECT_DOUBLE_EQ(f.limit, 2.5);
}

TEST(Rule, NothingWhereSomethingIsAskedFails) { EXPECT_EQ(at_least(0, 2.5), Verdict::fails); }

}  // namespace
}  // namespace toft::rules
