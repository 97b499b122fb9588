#include "finals/circuits.h"

#include "circuit/circuits.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using Judge = Finding<Silent> (*)(Silent&, const Case<Silent>&);

Finding<Silent> found(const site::Job& job, Judge judge, double section = 6) {
    Silent silent;
    const auto setting = support::prepared(job);
    const auto scheme = support::scheme(support::cable(3, section),
                                        study::Protective::core_and_armour, support::fuse(32));
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, study::Stage::circuits, figures);
    return judge(silent, Case<Silent>{setting, scheme, figures});
}

site::Circuit stated(double section, double length) {
    site::Circuit c = circuit::heater(3000, length);
    c.cable = site::CircuitCable{"flat twin and earth", square_millimetres(section), {}};
    return c;
}

TEST(FinalCircuits, ABuildingWithoutCircuitsIsNotJudgedByThem) {
    const auto f = found(support::plain_job(), circuit_drop<Silent>);
    EXPECT_EQ(f.verdict, Verdict::meets);
    EXPECT_FALSE(f.limited);
}

TEST(FinalCircuits, TheWorstCircuitIsNamed) {
    const auto f =
        found(circuit::job_with({circuit::heater(500, 5), stated(1.5, 60)}), circuit_drop<Silent>);
    EXPECT_EQ(f.circuit, 1);
    EXPECT_EQ(f.verdict, Verdict::fails);
    EXPECT_EQ(f.limit, 5);
}

TEST(FinalCircuits, ADeviceThatIsTooSmallOrTooLargeFails) {
    site::Circuit small = stated(2.5, 8);
    small.device = site::NamedDevice{"BS EN 61009", "B", amperes(10)};
    EXPECT_EQ(found(circuit::job_with({small}), circuit_rating<Silent>).verdict, Verdict::fails);
    site::Circuit large = stated(1.5, 8);
    large.device = site::NamedDevice{"BS EN 61009", "B", amperes(32)};
    EXPECT_EQ(found(circuit::job_with({large}), circuit_rating<Silent>).verdict, Verdict::fails);
    EXPECT_EQ(found(circuit::job_with({stated(2.5, 8)}), circuit_rating<Silent>).verdict,
              Verdict::meets);
}

TEST(FinalCircuits, ABreakerWithoutResidualCurrentMustClearAnEarthFaultItself) {
    site::Circuit c = stated(1, 120);
    c.load_w = support::measured(100.0);
    c.device = site::NamedDevice{"BS EN 60898", "D", amperes(20)};
    EXPECT_EQ(found(circuit::job_with({c}), circuit_disconnection<Silent>).verdict, Verdict::fails);
    c.device = site::NamedDevice{"BS EN 61009", "C", amperes(20)};
    const auto f = found(circuit::job_with({c}), circuit_disconnection<Silent>);
    EXPECT_EQ(f.verdict, Verdict::caution);
    EXPECT_STRNE(f.says, "");
}

TEST(FinalCircuits, ADeepStartIsACautionUnlessALimitIsWished) {
    site::Job job = circuit::job_with({circuit::saw(5000, 8, 30)});
    EXPECT_EQ(found(job, motor_start<Silent>, 2.5).verdict, Verdict::caution);
    job.wishes.start_dip = support::measured(10.0);
    EXPECT_EQ(found(job, motor_start<Silent>, 2.5).verdict, Verdict::fails);
    EXPECT_EQ(found(circuit::job_with({circuit::saw(200, 4, 5)}), motor_start<Silent>).verdict,
              Verdict::meets);
}

TEST(FinalCircuits, ASourceThatLiftsTheVoltageIsACaution) {
    site::Circuit c = circuit::heater(3680, 25);
    c.kind = site::CircuitKind::solar;
    const auto f = found(circuit::job_with({c}), voltage_rise<Silent>, 2.5);
    EXPECT_EQ(f.verdict, Verdict::caution);
    EXPECT_GT(f.value, 1);
}

TEST(FinalCircuits, WhatIsDesignedSurvivesItsFaultsAndBreaksThem) {
    const site::Job job =
        circuit::job_with({circuit::ring(40), circuit::heater(3000, 12), circuit::saw(1500, 6, 9)});
    EXPECT_EQ(found(job, circuit_heat<Silent>).verdict, Verdict::meets);
    EXPECT_EQ(found(job, circuit_breaking<Silent>).verdict, Verdict::meets);
}

TEST(FinalCircuits, AStartThatDimsAndTripsIsTold) {
    site::Circuit saw = circuit::saw(2200, 6, 12);
    saw.device = site::NamedDevice{"BS EN 61009", "B", amperes(10)};
    const auto f = found(circuit::job_with({saw}), motor_start<Silent>, 2.5);
    EXPECT_EQ(f.verdict, Verdict::caution);
    EXPECT_NE(std::string(f.says).find("may trip"), std::string::npos) << f.says;
    EXPECT_NE(std::string(f.says).find("lights dim"), std::string::npos) << f.says;
    saw.device->curve = "D";
    const auto held = found(circuit::job_with({saw}), motor_start<Silent>, 2.5);
    EXPECT_EQ(std::string(held.says).find("may trip"), std::string::npos) << held.says;
}

TEST(FinalCircuits, AStartConcernsOnlyARunWithAMotorOrWhatMayBeOne) {
    EXPECT_FALSE(found(support::plain_job(), motor_start<Silent>).concerns);
    EXPECT_FALSE(found(circuit::job_with({circuit::heater(500, 5)}), motor_start<Silent>).concerns);
    site::Circuit unread = circuit::heater(500, 5);
    unread.length = {};
    EXPECT_FALSE(found(circuit::job_with({unread}), motor_start<Silent>).concerns);
    EXPECT_FALSE(found(circuit::job_with({unread}), voltage_rise<Silent>).concerns);
    unread.kind = site::CircuitKind::motor;
    EXPECT_TRUE(found(circuit::job_with({unread}), motor_start<Silent>).concerns);
    EXPECT_FALSE(found(circuit::job_with({unread}), voltage_rise<Silent>).concerns);
    unread.kind = site::CircuitKind::solar;
    EXPECT_FALSE(found(circuit::job_with({unread}), motor_start<Silent>).concerns);
    EXPECT_TRUE(found(circuit::job_with({unread}), voltage_rise<Silent>).concerns);
    unread.kind = site::CircuitKind::sub_board;  // anything may hang on it
    EXPECT_TRUE(found(circuit::job_with({unread}), motor_start<Silent>).concerns);
    EXPECT_TRUE(found(circuit::job_with({unread}), voltage_rise<Silent>).concerns);
}

}  // namespace
}  // namespace toft::rules
