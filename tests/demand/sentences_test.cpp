#include "demand/sentences.h"

#include "demand/circuits.h"

#include <gtest/gtest.h>

namespace toft::demand {
namespace {

using site::CircuitKind;
using site::Scenario;

std::string said(const site::Building& b, Scenario scenario = Scenario::likely) {
    std::string all;
    for (const std::string& line : demand_sentences(support::catalogue().demand, b, scenario)) {
        all += line + "\n";
    }
    return all;
}

bool speaks_of(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

site::Building room() {
    site::Building b;
    b.circuits = {drawing(CircuitKind::socket_ring, 20), drawing(CircuitKind::kiln, 13)};
    return b;
}

TEST(DemandSentences, NameTheScenarioTheAllowancesAndWhatCountsWhole) {
    const std::string text = said(room());
    EXPECT_TRUE(speaks_of(text, "as likely, with what is planned")) << text;
    EXPECT_TRUE(speaks_of(text, "allowances for a household"));
    EXPECT_TRUE(speaks_of(text, "final circuits 100 % of the largest and 40 % of the others"));
    EXPECT_TRUE(speaks_of(text, "counted whole: kiln"));
    EXPECT_TRUE(speaks_of(said(room(), Scenario::everything), "without diversity"));
    EXPECT_FALSE(speaks_of(said(room(), Scenario::everything), "On-Site Guide"));
}

TEST(DemandSentences, AWelderIsSaidToCountByItsDuty) {
    site::Building b;
    b.circuits = {drawing(CircuitKind::welder, 26)};
    b.circuits[0].duty_percent = support::measured(35.0);
    EXPECT_TRUE(speaks_of(said(b), "welder at its effective current for 35 % duty")) << said(b);
    EXPECT_TRUE(speaks_of(said(b), "more volts are lost"));
    EXPECT_FALSE(speaks_of(said(b, Scenario::everything), "more volts are lost"));
}

TEST(DemandSentences, AUsualRatingIsSaid) {
    site::Building b;
    b.circuits = {circuit(CircuitKind::socket_ring)};
    EXPECT_TRUE(speaks_of(said(b), "taken at 32 A, the usual rating of a socket ring circuit"));
    EXPECT_FALSE(speaks_of(said(room()), "usual rating"));
}

TEST(DemandSentences, WhatGivesCurrentIsSaidNotToCount) {
    site::Building b = room();
    b.circuits.push_back(drawing(CircuitKind::solar, 16));
    b.circuits.push_back(circuit(CircuitKind::battery));
    EXPECT_TRUE(speaks_of(said(b), "solar: gives current and is not counted as load"));
    EXPECT_TRUE(speaks_of(said(b), "battery: what it draws and gives is not stated"));
    b.circuits = {circuit(CircuitKind::solar)};
    EXPECT_TRUE(speaks_of(said(b), "the run is not sized for it"));
}

TEST(DemandSentences, APowerFactorNobodyStatedIsSaid) {
    site::Building b = room();
    EXPECT_FALSE(speaks_of(said(b), "power factor"));
    b.circuits[0].power_factor = {};
    EXPECT_TRUE(speaks_of(said(b), "power factor not stated"));
    site::Building stated;
    stated.load = support::measured(amperes(20));
    EXPECT_EQ(said(stated), "");
    stated.load = {};
    stated.load_w = support::measured(2000.0);
    EXPECT_TRUE(speaks_of(said(stated), "power factor not stated"));
}

}  // namespace
}  // namespace toft::demand
