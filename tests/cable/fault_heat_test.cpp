#include "cable/fault_heat.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>

#include <utility>
#include <vector>

namespace toft::cable {
namespace {

const Name name{"k2S2", "withstand"};

TEST(FaultHeat, TenSquareMillimetresWithstandTwoMillionAmpereSquareSeconds) {
    Silent ledger;
    EXPECT_EQ(withstand(ledger, name, heat_constant(143), square_millimetres(10)),
              ampere_square_seconds(143.0 * 143 * 100));
}

TEST(FaultHeat, TwiceTheSectionWithstandsFourTimesTheEnergy) {
    Silent ledger;
    const auto one = withstand(ledger, name, heat_constant(46), square_millimetres(21));
    const auto two = withstand(ledger, name, heat_constant(46), square_millimetres(42));
    EXPECT_EQ(two, one * 4.0);
}

TEST(FaultHeat, EveryTabulatedConstantFollowsFromItsTemperatures) {
    const auto& c = support::catalogue().cable_constants;
    std::vector<std::pair<const tables::FaultHeat*, const tables::Material*>> rows = {
        {&c.separate, &c.copper}};
    for (const tables::Make& make : support::catalogue().makes) {
        rows.push_back({&make.live, &c.material(make.metal)});
        rows.push_back({&make.core, &c.material(make.metal)});
        if (make.armoured) rows.push_back({&make.armour, &c.steel});
    }
    ASSERT_EQ(rows.size(), 1 + 2 * tables::families + 3);
    for (const auto& [heat, metal] : rows) {
        const HeatConstant k = k_from_principles(metal->big_k.value, metal->beta.value.number(),
                                                 heat->initial.value, heat->final.value);
        EXPECT_NEAR(k.number() / heat->k.value.number(), 1, 0.011) << heat->k.value.number();
    }
}

TEST(FaultHeat, AConductorThatStartsHotterWithstandsLess) {
    const auto cool = k_from_principles(226, 234.5, celsius(30), celsius(250));
    const auto warm = k_from_principles(226, 234.5, celsius(90), celsius(250));
    EXPECT_LT(warm, cool);
    EXPECT_EQ(k_from_principles(226, 234.5, celsius(250), celsius(250)), heat_constant(0));
}

TEST(FaultHeat, WritesWorkingThatHolds) {
    Recording ledger;
    const auto k = ledger.table({"k", "constant"},
                                support::make(tables::Family::armoured_xlpe_copper).armour.k);
    const auto s = ledger.stated({"S", "section"}, square_millimetres(42), "scheme");
    withstand(ledger, name, k, s);
    EXPECT_EQ(ledger.lines().back().formula, "k² × S²");
    EXPECT_EQ(ledger.lines().back().unit, "A²s");
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

}  // namespace
}  // namespace toft::cable
