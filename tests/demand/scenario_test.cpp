#include "demand/scenario.h"

#include "base/limit.h"
#include "demand/circuits.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::demand {
namespace {

using site::CircuitKind;
using site::Scenario;
using support::measured;

BuildingDemand<Silent> demand(const site::Building& b, Scenario scenario, int phases = 1) {
    Silent ledger;
    return building_demand(ledger, place(phases), b, scenario);
}

double total(const site::Building& b, Scenario scenario) {
    return demand(b, scenario).total.number();
}

site::Circuit later(site::Circuit circuit) {
    circuit.later = site::Answer::yes;
    return circuit;
}

site::Building workshop() {
    site::Building b;
    b.use = site::Use::workshop;
    b.circuits = {drawing(CircuitKind::socket_ring, 32), drawing(CircuitKind::socket_radial, 20),
                  drawing(CircuitKind::lighting, 2)};
    return b;
}

TEST(Scenario, EachLoadHasItsAllowance) {
    EXPECT_DOUBLE_EQ(total(workshop(), Scenario::today), 32 + 0.4 * 20 + 0.66 * 2);
    EXPECT_DOUBLE_EQ(total(workshop(), Scenario::everything), 54);
}

TEST(Scenario, WhatIsPlannedCountsFromLikelyOn) {
    site::Building b = workshop();
    const double before = total(b, Scenario::today);
    b.circuits.push_back(later(drawing(CircuitKind::vehicle_charging, 32)));
    b.future_load = measured(amperes(5));
    EXPECT_DOUBLE_EQ(total(b, Scenario::today), before);
    EXPECT_DOUBLE_EQ(total(b, Scenario::likely), before + 37);
    EXPECT_DOUBLE_EQ(total(b, Scenario::everything), 54 + 37);
}

TEST(Scenario, AnOfficeHasTheColumnOfAnOffice) {
    site::Building b = workshop();
    b.use = site::Use::office;
    EXPECT_DOUBLE_EQ(total(b, Scenario::today), 32 + 0.5 * 20 + 0.9 * 2);
    b.use.reset();
    EXPECT_DOUBLE_EQ(total(b, Scenario::today), 32 + 0.4 * 20 + 0.66 * 2);
}

TEST(Scenario, WhatHasNoPublishedAllowanceCountsWhole) {
    for (const CircuitKind kind :
         {CircuitKind::hot_tub, CircuitKind::sauna, CircuitKind::kiln, CircuitKind::heat_pump,
          CircuitKind::vehicle_charging, CircuitKind::motor, CircuitKind::sub_board}) {
        site::Building b;
        b.circuits = {drawing(kind, 30), drawing(kind, 10)};
        EXPECT_DOUBLE_EQ(total(b, Scenario::likely), 40) << site::word(kind);
    }
}

TEST(Scenario, ALoadThatStaysOnForHoursCountsWhole) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::fixed_load, 8), drawing(CircuitKind::fixed_load, 8)};
    EXPECT_DOUBLE_EQ(total(b, Scenario::likely), 13);
    for (auto& heater : b.circuits) heater.continuous = site::Answer::yes;
    EXPECT_DOUBLE_EQ(total(b, Scenario::likely), 16);
}

TEST(Scenario, OneHeaterDrawsItsWholeCurrent) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::fixed_load, 39)};
    EXPECT_DOUBLE_EQ(total(b, Scenario::likely), 39);
}

TEST(Scenario, AWelderCountsByItsDutyButAtWorkInEverything) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::welder, 26)};
    b.circuits[0].duty_percent = measured(36.0);
    EXPECT_DOUBLE_EQ(total(b, Scenario::likely), 15.6);
    EXPECT_DOUBLE_EQ(total(b, Scenario::everything), 26);
}

TEST(Scenario, SolarAndBatteryTogetherAreSentOutAndAreNoDemand) {
    site::Building b = workshop();
    b.circuits.push_back(drawing(CircuitKind::solar, 10));
    b.circuits.push_back(drawing(CircuitKind::battery, 12));
    b.circuits.push_back(later(drawing(CircuitKind::solar, 6)));
    Silent ledger;
    EXPECT_DOUBLE_EQ(sent_out(ledger, place(), b, Scenario::today).number(), 22);
    EXPECT_DOUBLE_EQ(sent_out(ledger, place(), b, Scenario::likely).number(), 28);
    EXPECT_DOUBLE_EQ(total(b, Scenario::today), total(workshop(), Scenario::today) + 12);
    EXPECT_EQ(sent_out(ledger, place(), workshop(), Scenario::today), amperes(0));
}

TEST(Scenario, AHouseByItsCircuits) {
    site::Building b;
    b.circuits = {circuit(CircuitKind::socket_ring),      circuit(CircuitKind::socket_ring),
                  drawing(CircuitKind::cooker, 40),       drawing(CircuitKind::shower, 40),
                  drawing(CircuitKind::water_heater, 13), drawing(CircuitKind::lighting, 10)};
    EXPECT_DOUBLE_EQ(total(b, Scenario::today), 32 + 0.4 * 32 + (10 + 9 + 5) + 40 + 13 + 6.6);
    EXPECT_DOUBLE_EQ(total(b, Scenario::everything), 64 + 40 + 5 + 40 + 13 + 10);
}

TEST(Scenario, AStatedLoadIsTheSameInEachAndSpreadEvenly) {
    site::Building b;
    b.load_w = measured(6900.0);
    for (const Scenario scenario : {Scenario::today, Scenario::likely, Scenario::everything}) {
        EXPECT_DOUBLE_EQ(total(b, scenario), 30);
        EXPECT_DOUBLE_EQ(demand(b, scenario, 3).total.number(), 10);
        EXPECT_EQ(demand(b, scenario, 3).neutral, amperes(0));
    }
}

TEST(Scenario, OnThreeLinesEachHasItsOwnLargestCircuit) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::socket_ring, 32), drawing(CircuitKind::socket_radial, 20),
                  drawing(CircuitKind::socket_radial, 16), drawing(CircuitKind::motor, 10, 3)};
    const auto found = demand(b, Scenario::likely, 3);
    EXPECT_DOUBLE_EQ(found.lines.each[0].number(), 42);
    EXPECT_DOUBLE_EQ(found.lines.each[1].number(), 30);
    EXPECT_DOUBLE_EQ(found.lines.each[2].number(), 26);
    EXPECT_DOUBLE_EQ(found.heaviest.number(), 42);
    EXPECT_NEAR(found.neutral.number(),
                std::sqrt(32 * 32 + 20 * 20 + 16 * 16 - 32 * 20 - 20 * 16 - 16 * 32), 1e-9);
}

TEST(Scenario, ThirdHarmonicsShrinkWithTheLineTheyAreOn) {
    site::Building b;
    for (int k = 0; k < 3; ++k) {
        b.circuits.push_back(drawing(CircuitKind::lighting, 10));
        b.circuits.back().third_harmonic = measured(40.0);
    }
    EXPECT_NEAR(demand(b, Scenario::likely, 3).neutral.number(), 3 * 4 * 0.66, 1e-9);
    EXPECT_NEAR(demand(b, Scenario::everything, 3).neutral.number(), 12, 1e-9);
}

TEST(Scenario, ABuildingWithNothingStatedHasNoLoad) {
    const site::Building b;
    EXPECT_FALSE(load_is_stated(b));
    EXPECT_FALSE(by_circuits(b));
    EXPECT_EQ(total(b, Scenario::likely), 0);
}

site::Circuit drawn_circuit(bool three_phases) {
    const auto kind = static_cast<CircuitKind>(
        *rc::gen::inRange<std::size_t>(0, site::words<CircuitKind>().size()));
    site::Circuit c = drawing(kind, *rc::gen::inRange(1, 5000) / 100.0,
                              three_phases && *rc::gen::inRange(0, 4) == 0 ? 3 : 1);
    if (*rc::gen::inRange(0, 3) == 0) c.load_w = {};
    if (*rc::gen::inRange(0, 3) == 0) c.later = site::Answer::yes;
    if (*rc::gen::inRange(0, 4) == 0) c.continuous = site::Answer::yes;
    c.duty_percent = measured(*rc::gen::inRange(1, 101) * 1.0);
    return c;
}

site::Building drawn_building(bool three_phases) {
    site::Building b;
    b.use =
        static_cast<site::Use>(*rc::gen::inRange<std::size_t>(0, site::words<site::Use>().size()));
    const int count = *rc::gen::inRange(1, 9);
    for (int i = 0; i < count; ++i) b.circuits.push_back(drawn_circuit(three_phases));
    if (*rc::gen::inRange(0, 2)) b.future_load = measured(amperes(*rc::gen::inRange(0, 30)));
    return b;
}

bool no_less(Amperes a, Amperes b) { return within(b.number(), a.number()); }

RC_GTEST_PROP(Scenario, EverythingIsNoLessThanLikelyAndLikelyNoLessThanToday, ()) {
    const int phases = *rc::gen::element(1, 3);
    const site::Building b = drawn_building(phases == 3);
    const auto today = demand(b, Scenario::today, phases);
    const auto likely = demand(b, Scenario::likely, phases);
    const auto everything = demand(b, Scenario::everything, phases);
    for (std::size_t k = 0; k < 3; ++k) {
        RC_ASSERT(no_less(likely.lines.each[k], today.lines.each[k]));
        RC_ASSERT(no_less(everything.lines.each[k], likely.lines.each[k]));
    }
    RC_ASSERT(no_less(likely.total, today.total));
    RC_ASSERT(no_less(everything.total, likely.total));
}

RC_GTEST_PROP(Scenario, OneMoreCircuitNeverLowersTheDemandOfOneLine, ()) {
    site::Building b = drawn_building(false);
    const Scenario scenario =
        *rc::gen::element(Scenario::today, Scenario::likely, Scenario::everything);
    const auto before = demand(b, scenario);
    b.circuits.push_back(drawn_circuit(false));
    RC_ASSERT(no_less(demand(b, scenario).total, before.total));
}

RC_GTEST_PROP(Scenario, ACircuitPlannedForLaterNeverLowersAnyOfThreeLines, ()) {
    site::Building b = drawn_building(true);
    for (auto& c : b.circuits) c.later = site::Answer::no;
    const auto before = demand(b, Scenario::likely, 3);
    b.circuits.push_back(later(drawn_circuit(true)));
    const auto after = demand(b, Scenario::likely, 3);
    for (std::size_t k = 0; k < 3; ++k) {
        RC_ASSERT(no_less(after.lines.each[k], before.lines.each[k]));
    }
}

RC_GTEST_PROP(Scenario, WhatIsRecordedIsWhatIsReckonedAndReadsAsAFormula, ()) {
    const int phases = *rc::gen::element(1, 3);
    const site::Building b = drawn_building(phases == 3);
    Recording ledger;
    const Place<Recording> at{&support::catalogue().demand,
                              ledger.stated({"U0", "voltage"}, volts(230), "survey"), phases,
                              "house"};
    const auto recorded = building_demand(ledger, at, b, Scenario::likely);
    const auto silent = demand(b, Scenario::likely, phases);
    RC_ASSERT(recorded.total.value == silent.total);
    RC_ASSERT(recorded.neutral.value == silent.neutral);
    RC_ASSERT(support::wrong_lines(ledger.lines()) == std::vector<std::string>{});
}

}  // namespace
}  // namespace toft::demand
