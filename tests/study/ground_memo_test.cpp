#include "study/ground_memo.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

SoilSetting even_year(double resistivity) {
    SoilSetting soil;
    soil.worst = soil.best = {even_soil(ohm_metres(resistivity))};
    soil.whole_year = false;
    return soil;
}

TEST(GroundMemo, KeepsAYearForEachSoil) {
    GroundMemo memo;
    const tables::Catalogue& catalogue = support::catalogue();
    const BuiltElectrode rod = built({}, catalogue);
    const auto first = kept_year(memo, catalogue, even_year(100), rod);
    kept_year(memo, catalogue, even_year(100), rod);
    EXPECT_EQ(memo.years.size(), 1u);
    SoilSetting dry = even_year(100);
    dry.read_dry = true;
    EXPECT_LT(kept_year(memo, catalogue, dry, rod).high, first.high);
    SoilSetting layered = even_year(100);
    layered.worst.front().layers = {{ohm_metres(300), metres(1)}};
    EXPECT_GT(kept_year(memo, catalogue, layered, rod).high, first.high);
    EXPECT_EQ(memo.years.size(), 3u);
    EXPECT_EQ(kept_year(memo, catalogue, even_year(100), rod).high, first.high);
}

TEST(GroundMemo, TellsElectrodesOfTwoBuildingsApart) {
    GroundMemo memo;
    const tables::Catalogue& catalogue = support::catalogue();
    const auto one = kept_year(memo, catalogue, even_year(100), built({}, catalogue));
    const BuiltElectrode two = rods_in_a_line(2, metres(2.4), millimetres(14.2), metres(2.4));
    EXPECT_LT(kept_year(memo, catalogue, even_year(100), two).high, one.high);
    EXPECT_EQ(memo.years.size(), 2u);
}

}  // namespace
}  // namespace toft::study
