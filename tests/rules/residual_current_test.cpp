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

site::Job with_circuits(std::vector<site::CircuitKind> kinds) {
    site::Job job = support::plain_job();
    for (const site::CircuitKind kind : kinds) {
        site::Circuit circuit;
        circuit.kind = kind;
        circuit.name = site::word(kind);
        circuit.load_w = measured(500.0);
        job.buildings[1].circuits.push_back(circuit);
    }
    job.intake.board.behind_rcd = measured(milliamperes(30));
    return job;
}

bool tells(const Finding<Silent>& found, const char* words) {
    return std::string(found.says).find(words) != std::string::npos;
}

// 531.3.3: a device in front sees no less than what it feeds.
TEST(ResidualCurrent, AHouseRcdThatWouldBeBlindedIsTheFirstThingSaid) {
    site::Job job = with_circuits({site::CircuitKind::solar});
    job.buildings[1].circuits[0].leakage = measured(milliamperes(2));
    job.intake.board.rcd_type = site::RcdType::a;
    EXPECT_TRUE(tells(residual_current_judged(job, FedFrom::spare_way, nullptr), "can blind"));
    job.intake.board.rcd_type = site::RcdType::b;
    EXPECT_FALSE(tells(residual_current_judged(job, FedFrom::spare_way, nullptr), "can blind"));
    EXPECT_EQ(residual_current_judged(job, FedFrom::tails, nullptr).verdict, Verdict::meets);
}

TEST(ResidualCurrent, AFreezerOnASharedRcdIsNamed) {
    const site::Job job =
        with_circuits({site::CircuitKind::freezer, site::CircuitKind::socket_radial});
    EXPECT_TRUE(
        tells(residual_current_judged(job, FedFrom::spare_way, nullptr), "takes the freezer"));
    EXPECT_TRUE(tells(by_rcbo(job, "residual-current"), "freezer goes dark"));
    EXPECT_EQ(residual_current_judged(job, FedFrom::tails, nullptr).verdict, Verdict::meets);
}

// 531.3.2 as remembered: no more than 30 % of the rating may leak in ordinary use.
TEST(ResidualCurrent, LeakageOverThirtyPerCentIsACaution) {
    site::Job job = with_circuits({site::CircuitKind::socket_radial});
    job.buildings[1].circuits[0].leakage = measured(milliamperes(9));
    EXPECT_EQ(residual_current_judged(job, FedFrom::tails, nullptr).verdict, Verdict::meets);
    job.buildings[1].circuits[0].leakage = measured(milliamperes(9.5));
    const auto found = residual_current_judged(job, FedFrom::tails, nullptr);
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_TRUE(tells(found, "30 %"));
}

TEST(ResidualCurrent, ADelayedHundredOfTheHouseLeavesFaultsInTheBuildingToIt) {
    site::Job job = with_circuits({site::CircuitKind::socket_radial});
    job.intake.board.behind_rcd = measured(milliamperes(100));
    job.intake.board.rcd_delayed = site::Answer::yes;
    job.intake.board.rcd_type = site::RcdType::a;
    const auto found = residual_current_judged(job, FedFrom::spare_way, nullptr);
    EXPECT_EQ(found.verdict, Verdict::caution);
    EXPECT_TRUE(tells(found, "leaves faults in the building"));
}

}  // namespace
}  // namespace toft::rules
