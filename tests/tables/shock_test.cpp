#include "tables/shock.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

const Shock& shock() { return support::catalogue().shock; }

TEST(ShockTables, FindAConditionByItsWordsOnly) {
    for (const Condition& condition : shock().conditions) {
        EXPECT_EQ(find_condition(shock(), condition.words), &condition);
    }
    EXPECT_EQ(find_condition(shock(), "on the moon"), nullptr);
}

TEST(ShockTables, FindTheHeartFactorOfAPath) {
    ASSERT_NE(find_heart_factor(shock(), "hand to hand"), nullptr);
    EXPECT_EQ(find_heart_factor(shock(), "hand to hand")->factor.value, 0.4);
    EXPECT_EQ(find_heart_factor(shock(), "ear to ear"), nullptr);
}

TEST(ShockTables, WetterSkinNeverHasMoreImpedanceAtAnyTabulatedVoltage) {
    for (Percentile p : {Percentile::five, Percentile::fifty, Percentile::ninety_five}) {
        const auto& dry = shock().impedance(Skin::dry, p);
        const auto& wet = shock().impedance(Skin::water_wet, p);
        const auto& salt = shock().impedance(Skin::salt_wet, p);
        for (std::size_t i = 0; i < dry.size(); ++i) {
            EXPECT_LE(wet[i].y.value, dry[i].y.value) << dry[i].x;
            EXPECT_LE(salt[i].y.value, wet[i].y.value) << dry[i].x;
        }
    }
}

TEST(ShockTables, ThresholdsGoByWhatTheyBelongTo) {
    EXPECT_LT(shock().limit(Threshold::wet).limit.value, shock().limit(Threshold::dry).limit.value);
    EXPECT_LT(shock().limit(Threshold::dry).limit.value,
              shock().limit(Threshold::charging_point).limit.value);
}

}  // namespace
}  // namespace toft::tables
