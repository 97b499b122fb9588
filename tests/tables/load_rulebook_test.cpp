#include "tables/sheet.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

#include <sstream>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadRulebook, LimitsComeInTheUnitsOfTheCalculations) {
    const Limits& limits = support::catalogue().limits;
    EXPECT_EQ(limits.u0.value, volts(230));
    EXPECT_EQ(limits.c_min.value, 0.95);
    EXPECT_EQ(limits.residual_socket.value, milliamperes(30));
    EXPECT_EQ(limits.declared_pscc.value, kiloamperes(16));
    EXPECT_GT(limits.extraneous.value, ohms(1000));
    EXPECT_EQ(limits.disconnection_tn.value, seconds(5));
    EXPECT_EQ(limits.disconnection_tt.value, seconds(1));
}

TEST(LoadRulebook, EveryLimitThatAReaderNeedsIsMissedWhenItIsGone) {
    std::istringstream rows{std::string(embedded_text("rules/limit.csv"))};
    std::string row;
    std::getline(rows, row);
    int tried = 0;
    int missed = 0;
    while (std::getline(rows, row)) {
        const std::string key = row.substr(0, row.find(','));
        ++tried;
        missed += SpoiltTables()
                      .change("rules/limit.csv", "\n" + key + ",", "\nx." + key + ",")
                      .refused("rules/limit.csv", "there is no limit " + key);
    }
    EXPECT_GT(tried, 20);
    EXPECT_GT(missed, 20);
}

TEST(LoadRulebook, BondingStepsFollowOneAnotherWithoutAGap) {
    const auto& steps = support::catalogue().main_bonding;
    ASSERT_EQ(steps.size(), 5u);
    EXPECT_EQ(steps.front().over, square_millimetres(0));
    for (std::size_t i = 1; i < steps.size(); ++i) {
        EXPECT_EQ(steps[i].over, steps[i - 1].to);
        EXPECT_GT(steps[i].bond.value, steps[i - 1].bond.value);
    }
    EXPECT_GE(steps.back().to, square_millimetres(400));
}

TEST(LoadRulebook, EveryStepOfTheEarthingDecisionSaysWhoseWordItIs) {
    EXPECT_GT(support::catalogue().earthing_basis.size(), 10u);
    for (const EarthingBasis& row : support::catalogue().earthing_basis) {
        EXPECT_FALSE(row.key.empty());
        EXPECT_FALSE(row.clause.empty()) << row.key;
        EXPECT_NE(row.citation, nullptr) << row.key;
        EXPECT_STRNE(authority_word(row.authority), "") << row.key;
    }
    EXPECT_TRUE(SpoiltTables()
                    .change("rules/earthing_basis.csv", "movable,law", "movable,custom")
                    .refused("rules/earthing_basis.csv", "no such kind of authority: custom"));
}

TEST(LoadRulebook, NoRangeRunsBackwards) {
    EXPECT_GT(support::catalogue().open_ranges.size(), 10u);
    for (const OpenRange& range : support::catalogue().open_ranges) {
        EXPECT_LE(range.low.value, range.high.value) << range.fact;
        EXPECT_GE(range.low.value, 0) << range.fact;
    }
    for (const Soil& soil : support::catalogue().soils) {
        EXPECT_LT(soil.low.value, soil.high.value) << soil.word;
        EXPECT_GT(soil.low.value, ohm_metres(0)) << soil.word;
    }
}

TEST(LoadRulebook, AnUnknownLoopNeverExceedsTheDeclaredFaultLevel) {
    const Catalogue& c = support::catalogue();
    for (const char* fact : {"ze.tn-c-s", "ze.tn-s", "ln_loop.tt"}) {
        const Ohms least = ohms(find_open_range(c, fact)->low.value);
        EXPECT_LE(c.limits.c_max.value * c.limits.u0.value / least, c.limits.declared_pscc.value)
            << fact;
    }
}

TEST(LoadRulebook, RefusesNumbersThatAreNoneAndMissingColumns) {
    EXPECT_TRUE(SpoiltTables()
                    .change("rules/limit.csv", "u0,230,", "u0,two thirty,")
                    .refused("rules/limit.csv", "not a number"));
    EXPECT_TRUE(SpoiltTables()
                    .change("rules/main_bonding.csv", "bond_mm2", "bond")
                    .refused("rules/main_bonding.csv", "no column bond_mm2"));
    EXPECT_TRUE(SpoiltTables()
                    .change("earth/soil.csv", "high_ohm_m", "high")
                    .refused("earth/soil.csv", "no column high_ohm_m"));
}

}  // namespace
}  // namespace toft::tables
