#include "tables/shock.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::shock_tables;

TEST(ShockTables, FindAConditionByItsWordsOnly) {
    for (const Condition& condition : shock_tables().conditions) {
        EXPECT_EQ(find_condition(shock_tables(), condition.words), &condition);
    }
    EXPECT_EQ(find_condition(shock_tables(), "on the moon"), nullptr);
}

TEST(ShockTables, FindTheHeartFactorOfAPath) {
    ASSERT_NE(find_heart_factor(shock_tables(), "hand to hand"), nullptr);
    EXPECT_EQ(find_heart_factor(shock_tables(), "hand to hand")->factor.value, 0.4);
    EXPECT_EQ(find_heart_factor(shock_tables(), "ear to ear"), nullptr);
}

TEST(ShockTables, WetterSkinNeverHasMoreImpedanceAtAnyTabulatedVoltage) {
    for (Percentile p : {Percentile::five, Percentile::fifty, Percentile::ninety_five}) {
        const auto& dry = shock_tables().impedance(Skin::dry, p);
        const auto& wet = shock_tables().impedance(Skin::water_wet, p);
        const auto& salt = shock_tables().impedance(Skin::salt_wet, p);
        for (std::size_t i = 0; i < dry.size(); ++i) {
            EXPECT_LE(wet[i].y.value, dry[i].y.value) << dry[i].x;
            EXPECT_LE(salt[i].y.value, wet[i].y.value) << dry[i].x;
        }
    }
}

TEST(ShockTables, ThresholdsGoByWhatTheyBelongTo) {
    EXPECT_LT(shock_tables().limit(Threshold::wet).limit.value,
              shock_tables().limit(Threshold::dry).limit.value);
    EXPECT_LT(shock_tables().limit(Threshold::dry).limit.value,
              shock_tables().limit(Threshold::charging_point).limit.value);
}

}  // namespace
}  // namespace toft::tables
