#include "rules/residual_current.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::FedFrom;
using support::measured;

Finding<Silent> residual_current_judged(const site::Job& job, FedFrom place,
                                        const tables::RunRcd* rcd) {
    auto s =
        support::scheme(support::cable(2, 10), study::Protective::armour,
                        place == FedFrom::tails ? support::fuse(32) : support::breaker("B", 32));
    s.fed_from = place;
    s.rcd = rcd;
    EXPECT_TRUE(support::recorded_alike("residual-current", job, s));
    return support::finding_of("residual-current", job, s);
}

TEST(ResidualCurrent, EveryCircuitStandsBehindThirtyMilliamperes) {
    const auto found = residual_current_judged(support::plain_job(), FedFrom::tails, nullptr);
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_NE(std::string(found.says).find("30 mA"), std::string::npos);
}

TEST(ResidualCurrent, TheDeviceAtTheHeadIsThreeTimesAsLarge) {
    for (const tables::RunRcd& rcd : support::catalogue().run_rcds) {
        EXPECT_TRUE(rcd.delayed);
        const auto found = residual_current_judged(support::plain_job(), FedFrom::tails, &rcd);
        EXPECT_EQ(found.verdict, Verdict::meets);
        EXPECT_NEAR(found.value, rcd.sensitivity.number() / 0.03, 1e-9);
        EXPECT_DOUBLE_EQ(found.limit, 3);
    }
    tables::RunRcd rcd = support::catalogue().run_rcds.front();
    rcd.sensitivity = milliamperes(90);  // a tie
    EXPECT_EQ(residual_current_judged(support::plain_job(), FedFrom::tails, &rcd).verdict,
              Verdict::meets);
    rcd.sensitivity = milliamperes(30);
    EXPECT_EQ(residual_current_judged(support::plain_job(), FedFrom::tails, &rcd).verdict,
              Verdict::fails);
}

TEST(ResidualCurrent, HangingOnTheHousesRcdIsACaution) {
    site::Job job = support::plain_job();
    job.intake.board.behind_rcd = measured(milliamperes(30));
    EXPECT_EQ(residual_current_judged(job, FedFrom::spare_way, nullptr).verdict, Verdict::caution);
    EXPECT_EQ(residual_current_judged(job, FedFrom::tails, nullptr).verdict, Verdict::meets);
    EXPECT_EQ(residual_current_judged(job, FedFrom::new_board, nullptr).verdict, Verdict::meets);
    const auto* rcd = &support::catalogue().run_rcds.front();
    EXPECT_EQ(residual_current_judged(job, FedFrom::spare_way, rcd).verdict, Verdict::caution);
}

TEST(ResidualCurrent, TooSmallAnRcdAtTheHeadFailsBehindTheHousesToo) {
    site::Job job = support::plain_job();
    job.intake.board.behind_rcd = measured(milliamperes(30));
    tables::RunRcd rcd = support::catalogue().run_rcds.front();
    rcd.sensitivity = milliamperes(30);
    EXPECT_EQ(residual_current_judged(job, FedFrom::spare_way, &rcd).verdict, Verdict::fails);
}

Finding<Silent> by_rcbo(const site::Job& job, const char* rule) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour,
                             support::device("BS EN 61009", "B", 32));
    s.fed_from = FedFrom::new_board;
    EXPECT_TRUE(support::recorded_alike(rule, job, s));
    return support::finding_of(rule, job, s);
}

TEST(ResidualCurrent, AnRcboAtTheHeadMayTripWithTheBuildingsOwn) {
    const auto found = by_rcbo(support::plain_job(), "residual-current");
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_NE(std::string(found.says).find("RCBO"), std::string::npos);
    EXPECT_NEAR(found.value, 1, 1e-12);
}

TEST(ResidualCurrent, AnRcboClearsWhatItsBreakerWouldNot) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = measured(ohms(150));
    const auto found = by_rcbo(job, "disconnection");
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_NEAR(found.limit, 50 / 0.03, 1e-6);
}

TEST(ResidualCurrent, AnRcdInFrontOfTheBoardThatNobodyLookedForIsNeverTakenAsAbsent) {
    site::Job job = support::plain_job();
    job.intake.board.behind_rcd = {};
    EXPECT_EQ(residual_current_judged(job, FedFrom::spare_way, nullptr).verdict, Verdict::caution);
    EXPECT_EQ(residual_current_judged(job, FedFrom::tails, nullptr).verdict, Verdict::meets);
}

}  // namespace
}  // namespace toft::rules
