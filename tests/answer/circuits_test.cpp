#include "answer/circuits.h"

#include "circuit/circuits.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

Answer answered(const site::Job& job) {
    return design(Question{support::catalogue(), support::demo_book(), job});
}

TEST(CircuitsOfAnAnswer, EachCircuitHasItsCableDeviceAndFigures) {
    const site::Job job =
        circuit::job_with({circuit::ring(40), circuit::saw(1500, 6, 9), circuit::heater(2000, 6)});
    const Answer a = answered(job);
    ASSERT_TRUE(a.sound);
    const auto& circuits = a.schemes.front().building.circuits;
    ASSERT_EQ(circuits.size(), 3u);
    EXPECT_EQ(circuits[0].kind, "socket ring");
    EXPECT_NEAR(circuits[0].length_m, 40, 1e-9);
    EXPECT_TRUE(circuits[1].dip_percent);
    EXPECT_FALSE(circuits[2].dip_percent);
    for (const CircuitAnswer& c : circuits) {
        EXPECT_LE(c.drop_percent.value().use, 1 + 1e-9);
        EXPECT_GT(c.drop_percent->value, a.schemes.front().run.figures.voltage_drop_percent);
    }
}

TEST(CircuitsOfAnAnswer, AFindingNamesTheCircuitItIsAbout) {
    const Answer a = answered(circuit::job_with({circuit::heater(2000, 6)}));
    bool seen = false;
    for (const FindingAnswer& f : a.schemes.front().findings) {
        if (f.rule != "circuit-drop") continue;
        EXPECT_EQ(f.subject, "Heater");
        seen = true;
    }
    EXPECT_TRUE(seen);
}

TEST(CircuitsOfAnAnswer, TheirCablesAreInThePrice) {
    const double few =
        answered(circuit::job_with({circuit::heater(200, 3)})).schemes.front().price.far_end;
    const double more =
        answered(circuit::job_with({circuit::heater(200, 30)})).schemes.front().price.far_end;
    EXPECT_GT(more, few);
}

TEST(CircuitsOfAnAnswer, WhatCouldNotBeJudgedIsSaid) {
    site::Circuit c = circuit::heater(2000, 6);
    c.length = {};
    const Answer a = answered(circuit::job_with({c}));
    EXPECT_EQ(std::count(a.assumed.begin(), a.assumed.end(),
                         "circuit Heater is not judged: its length is not stated"),
              1);
}

}  // namespace
}  // namespace toft::answer
