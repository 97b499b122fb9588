#include "tables/sheet.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

using support::shock_tables;

TEST(LoadShock, ImpedancesComeBySkinAndPercentileInOrderOfVoltage) {
    for (Skin skin : {Skin::dry, Skin::water_wet, Skin::salt_wet}) {
        for (Percentile p : {Percentile::five, Percentile::fifty, Percentile::ninety_five}) {
            const auto& points = shock_tables().impedance(skin, p);
            ASSERT_EQ(points.size(), 13u);
            EXPECT_EQ(points.front().x, 25);
            EXPECT_EQ(points.back().x, 1000);
        }
    }
    EXPECT_EQ(shock_tables().impedance(Skin::dry, Percentile::fifty)[3].y.value, 1725);
    EXPECT_EQ(shock_tables().impedance(Skin::salt_wet, Percentile::five)[0].y.value, 960);
    EXPECT_EQ(shock_tables().impedance(Skin::salt_wet, Percentile::five)[0].y.citation->basis,
              Basis::memory);
}

TEST(LoadShock, ConditionsNameWhatIsWorn) {
    const Condition* shod = find_condition(shock_tables(), "shod on dry ground");
    ASSERT_NE(shod, nullptr);
    EXPECT_EQ(shod->footwear.value, ohms(2000));
    EXPECT_EQ(shod->footwear.citation->source, "ENA-TS-41-24");
    EXPECT_EQ(shod->ground.value, ohm_metres(100));
    const Condition* wet = find_condition(shock_tables(), "wet skin on wet ground");
    ASSERT_NE(wet, nullptr);
    EXPECT_EQ(wet->skin, Skin::salt_wet);
    EXPECT_EQ(wet->path, BodyPath::both_hands_to_both_feet);
}

TEST(LoadShock, ZonesAreInAmperesAndHeartFactorsNameTheirPath) {
    EXPECT_EQ(shock_tables().zones[static_cast<std::size_t>(ZoneLine::a)].front().y.value, 0.0005);
    EXPECT_EQ(shock_tables().heart.front().path, "left hand to feet");
    EXPECT_EQ(shock_tables().heart.front().factor.value, 1);
}

TEST(LoadShock, EachThresholdSaysWhatItBelongsTo) {
    EXPECT_EQ(shock_tables().limit(Threshold::wet).limit.value, volts(25));
    EXPECT_EQ(shock_tables().limit(Threshold::dry).limit.value, volts(50));
    EXPECT_EQ(shock_tables().limit(Threshold::charging_point).limit.value, volts(70));
    EXPECT_NE(shock_tables().limit(Threshold::charging_point).belongs_to.find("charging"),
              std::string::npos);
    for (const TouchThreshold& limit : shock_tables().limits) {
        EXPECT_EQ(limit.belongs_to.find("safe"), std::string::npos);
    }
}

TEST(LoadShock, WhatIsMissingOrUnknownIsRefused) {
    const auto refuses = [](const char* file, const char* from, const char* to, const char* says) {
        return SpoiltTables().change(file, from, to).refused(file, says);
    };
    EXPECT_TRUE(refuses("shock/body_impedance.csv", "dry,25", "oily,25", "oily"));
    EXPECT_TRUE(refuses("shock/body_path.csv", "both hands to both feet", "hand to hand",
                        "both hands to both feet"));
    EXPECT_TRUE(refuses("shock/condition.csv", "100,own", "much,own", "much"));
    EXPECT_TRUE(refuses("shock/condition.csv", ",5,shoes", ",5,clogs", "clogs"));
    EXPECT_TRUE(refuses("shock/touch_curve.csv", "wet,50", "damp,50", "damp"));
    EXPECT_TRUE(refuses("shock/current_zone.csv", "c3,", "c4,", "c4"));
    EXPECT_TRUE(refuses("shock/threshold.csv", "charging point,", "dry,", "charging point"));
    EXPECT_TRUE(refuses("shock/constant.csv", "electrode.rise", "electrode.fall", "rise"));
    EXPECT_TRUE(SpoiltTables()
                    .keep_lines("shock/touch_curve.csv", 10)
                    .refused("shock/touch_curve.csv", "wet"));
}

}  // namespace
}  // namespace toft::tables
