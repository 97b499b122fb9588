#include "demand/allowance.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::demand {
namespace {

const tables::Allowance& row(const char* load, const char* premises = "household") {
    const auto* found = tables::find_allowance(support::catalogue().demand, load, premises);
    EXPECT_NE(found, nullptr) << load << ", " << premises;
    return *found;
}

double demand(const tables::Allowance& row, std::vector<double> currents) {
    Silent ledger;
    std::vector<Amperes> all;
    for (const double i : currents) all.push_back(amperes(i));
    return allowed(ledger, row, all, AllowedAt<Silent>{}).number();
}

TEST(Allowance, OfRingsTheLargestCountsWholeAndTwoFifthsOfTheOthers) {
    EXPECT_DOUBLE_EQ(demand(row("final circuits"), {32}), 32);
    EXPECT_DOUBLE_EQ(demand(row("final circuits"), {20, 32, 32}), 32 + 0.4 * 52);
    EXPECT_DOUBLE_EQ(demand(row("final circuits", "small shop or office"), {20, 32, 32}),
                     32 + 0.5 * 52);
}

TEST(Allowance, LightingIsTwoThirdsOfAllOfIt) {
    EXPECT_DOUBLE_EQ(demand(row("lighting"), {6, 3, 1}), 6.6);
    EXPECT_DOUBLE_EQ(demand(row("lighting", "hotel"), {6, 3, 1}), 7.5);
}

TEST(Allowance, TenAmperesOfHeatingCountWholeAndHalfOfTheRest) {
    EXPECT_DOUBLE_EQ(demand(row("heating and power"), {6}), 6);
    EXPECT_DOUBLE_EQ(demand(row("heating and power"), {10}), 10);
    EXPECT_DOUBLE_EQ(demand(row("heating and power"), {13, 13}), 18);
}

TEST(Allowance, ACookerHasTenAmperesThreeTenthsOfTheRestAndItsSocket) {
    EXPECT_DOUBLE_EQ(demand(row("cooking"), {40}), 10 + 9 + 5);
}

TEST(Allowance, TheSecondOfThreeMotorsCountsMoreThanTheThird) {
    const auto& shop = row("motors", "small shop or office");
    EXPECT_DOUBLE_EQ(demand(shop, {5, 20, 10}), 20 + 0.8 * 10 + 0.6 * 5);
    EXPECT_EQ(tables::find_allowance(support::catalogue().demand, "motors", "household"), nullptr);
}

TEST(Allowance, WhatHeatsWaterOnAThermostatAndWhatChargesACarHasNone) {
    EXPECT_DOUBLE_EQ(demand(row("stored water heating"), {13, 13}), 26);
    EXPECT_DOUBLE_EQ(demand(row("vehicle charging"), {32, 32}), 64);
    EXPECT_DOUBLE_EQ(demand(row("instantaneous water heating"), {40, 30, 20}), 75);
}

TEST(Allowance, ALoadThatDrawsItsWholeCurrentIsNeverCutBelowIt) {
    Silent ledger;
    const Amperes kilowatts9 = amperes(39);
    const AllowedAt<Silent> at{0, "", &kilowatts9};
    EXPECT_EQ(allowed(ledger, row("heating and power"), {kilowatts9}, at), kilowatts9);
}

TEST(Allowance, IsSaidInWords) {
    EXPECT_EQ(allowance_words(row("lighting")), "66 %");
    EXPECT_EQ(allowance_words(row("heating and power")), "10 A and 50 % of the rest");
    EXPECT_EQ(allowance_words(row("final circuits")),
              "100 % of the largest and 40 % of the others");
    EXPECT_EQ(allowance_words(row("motors", "small shop or office")),
              "100 % of the largest, 80 % of the second and 60 % of the others");
    EXPECT_EQ(allowance_words(row("cooking")), "10 A and 30 % of the rest, and 5 A for a socket");
}

TEST(Allowance, TheWorkingShowsTheShareAndWhoseItIs) {
    Recording ledger;
    std::vector<Traced<Amperes>> currents;
    for (int i = 1; i <= 3; ++i) {
        currents.push_back(ledger.stated({"I", "a circuit", i}, amperes(10.0 * i), "survey"));
    }
    const auto sum =
        allowed(ledger, row("final circuits"), currents, AllowedAt<Recording>{0, "house"});
    const auto lines = ledger.working(sum.expression);
    EXPECT_EQ(support::wrong_lines(ledger.lines()), std::vector<std::string>{});
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines.back().symbol, "final.circuits.house");
    bool cited = false;
    for (const Line& line : lines) {
        cited = cited || (line.citation && line.citation->source == "allowances-reprint");
    }
    EXPECT_TRUE(cited);
}

std::vector<Amperes> drawn_currents() {
    std::vector<Amperes> all;
    for (const double i : *rc::gen::container<std::vector<double>>(
             rc::gen::map(rc::gen::inRange(1, 6000), [](int n) { return n / 100.0; }))) {
        all.push_back(amperes(i));
    }
    return all;
}

RC_GTEST_PROP(Allowance, OneMoreCircuitNeverLowersTheDemandAndNoneIsCountedTwice, ()) {
    Silent ledger;
    const auto& rows = support::catalogue().demand.allowances;
    const auto& row = rows[*rc::gen::inRange<std::size_t>(0, rows.size())];
    std::vector<Amperes> some = drawn_currents();
    RC_PRE(!some.empty());
    const Amperes before = allowed(ledger, row, some, AllowedAt<Silent>{});
    some.push_back(amperes(*rc::gen::inRange(0, 60)));
    const Amperes after = allowed(ledger, row, some, AllowedAt<Silent>{});
    Amperes all = row.extra.value * static_cast<double>(some.size());
    for (const Amperes i : some) all += i;
    RC_ASSERT(after.number() >= before.number() * (1 - 1e-12));
    RC_ASSERT(after.number() <= all.number() * (1 + 1e-12));
}

}  // namespace
}  // namespace toft::demand
