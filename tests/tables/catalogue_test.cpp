#include "tables/catalogue.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(Catalogue, LoadsFromTheEmbeddedTables) {
    for (const Fault& fault : SpoiltTables().faults()) ADD_FAILURE() << fault.pointer << fault.says;
    EXPECT_FALSE(support::catalogue().version.empty());
    EXPECT_FALSE(support::catalogue().sources.empty());
}

TEST(Catalogue, EveryCitationNamesASourceOfTheBibliography) {
    std::set<std::string> keys;
    for (const Source& source : support::catalogue().sources) {
        EXPECT_TRUE(keys.insert(source.key).second) << source.key;
        EXPECT_FALSE(source.title.empty()) << source.key;
    }
    for (const Citation& citation : support::catalogue().citations) {
        EXPECT_EQ(keys.count(citation.source), 1u) << citation.source;
        EXPECT_FALSE(citation.locator.empty()) << citation.source;
    }
    EXPECT_GT(support::catalogue().citations.size(), 200u);
}

TEST(Catalogue, WhatWasPublishedWasSeen) {
    std::set<std::string> seen;
    for (const Source& source : support::catalogue().sources) {
        EXPECT_TRUE(source.seen == "in print" || source.seen == "in reprint" ||
                    source.seen == "not seen")
            << source.key;
        if (source.seen != "not seen") seen.insert(source.key);
    }
    for (const Citation& citation : support::catalogue().citations) {
        if (citation.basis != Basis::published) continue;
        EXPECT_EQ(seen.count(citation.source), 1u) << citation.source;
    }
}

TEST(Catalogue, FindsConductorsAndRangesByName) {
    ASSERT_NE(find_conductor(support::catalogue(), square_millimetres(10)), nullptr);
    EXPECT_EQ(find_conductor(support::catalogue(), square_millimetres(10))->metal, Metal::copper);
    EXPECT_EQ(find_conductor(support::catalogue(), square_millimetres(11)), nullptr);
    ASSERT_NE(find_open_range(support::catalogue(), "reach"), nullptr);
    EXPECT_EQ(find_open_range(support::catalogue(), "nonsense"), nullptr);
}

const char* const all_files[] = {"VERSION",
                                 "sources.csv",
                                 "cable/family.csv",
                                 "cable/method.csv",
                                 "cable/size.csv",
                                 "cable/conductor_resistance.csv",
                                 "cable/conductor_reactance.csv",
                                 "cable/armour_resistance.csv",
                                 "cable/armour_area.csv",
                                 "cable/armour_ac.csv",
                                 "cable/overall_diameter.csv",
                                 "cable/rating.csv",
                                 "cable/voltage_drop.csv",
                                 "cable/material.csv",
                                 "cable/fault_k.csv",
                                 "cable/factor_ambient.csv",
                                 "cable/factor_soil.csv",
                                 "cable/factor_depth.csv",
                                 "cable/factor_grouping.csv",
                                 "cable/factor_insulation.csv",
                                 "device/device.csv",
                                 "device/curve.csv",
                                 "device/let_through.csv",
                                 "device/let_through_at.csv",
                                 "device/hold.csv",
                                 "device/kind.csv",
                                 "device/overload.csv",
                                 "device/residual.csv",
                                 "device/unlimited.csv",
                                 "device/rcd.csv",
                                 "rules/limit.csv",
                                 "rules/main_bonding.csv",
                                 "rules/circuit_kind.csv",
                                 "rules/depth_advice.csv",
                                 "rules/dependability.csv",
                                 "rules/unknown.csv",
                                 "rules/earthing_basis.csv",
                                 "earth/soil.csv",
                                 "earth/rod_parallel.csv",
                                 "earth/rod_lambda.csv",
                                 "earth/wire_star.csv",
                                 "earth/concrete.csv",
                                 "shock/body_impedance.csv",
                                 "shock/body_path.csv",
                                 "shock/heart_factor.csv",
                                 "shock/footwear.csv",
                                 "shock/touch_curve.csv",
                                 "shock/current_zone.csv",
                                 "shock/threshold.csv",
                                 "shock/constant.csv",
                                 "shock/condition.csv"};
const char* const files[] = {"VERSION",
                             "sources.csv",
                             "cable/family.csv",
                             "cable/method.csv",
                             "cable/size.csv",
                             "cable/conductor_resistance.csv",
                             "cable/conductor_reactance.csv",
                             "cable/armour_resistance.csv",
                             "cable/armour_area.csv",
                             "cable/armour_ac.csv",
                             "cable/overall_diameter.csv",
                             "cable/rating.csv",
                             "cable/voltage_drop.csv",
                             "cable/material.csv",
                             "cable/fault_k.csv",
                             "cable/factor_ambient.csv",
                             "cable/factor_soil.csv",
                             "cable/factor_depth.csv",
                             "cable/factor_grouping.csv",
                             "cable/factor_insulation.csv",
                             "device/device.csv",
                             "device/curve.csv",
                             "device/let_through.csv",
                             "device/hold.csv",
                             "device/kind.csv",
                             "device/overload.csv",
                             "device/residual.csv",
                             "device/unlimited.csv",
                             "device/rcd.csv",
                             "rules/limit.csv",
                             "rules/main_bonding.csv",
                             "rules/depth_advice.csv",
                             "rules/dependability.csv",
                             "rules/unknown.csv",
                             "rules/earthing_basis.csv",
                             "guard/need.csv",
                             "guard/basis.csv",
                             "guard/type.csv",
                             "guard/leakage.csv",
                             "ask/find_out.csv",
                             "lever/lever.csv",
                             "lever/worth.csv",
                             "earth/soil.csv",
                             "earth/rod_parallel.csv",
                             "earth/rod_lambda.csv",
                             "earth/wire_star.csv",
                             "earth/concrete.csv",
                             "shock/body_impedance.csv",
                             "shock/body_path.csv",
                             "shock/heart_factor.csv",
                             "shock/footwear.csv",
                             "shock/touch_curve.csv",
                             "shock/current_zone.csv",
                             "shock/threshold.csv",
                             "shock/constant.csv",
                             "shock/condition.csv"};

TEST(Catalogue, RefusesToLoadWithoutAnyOneOfItsFiles) {
    for (const char* file : all_files) {
        EXPECT_FALSE(SpoiltTables().remove(file).faults().empty()) << file;
    }
}

TEST(Catalogue, RefusesARowCutShortInAnyOfItsFiles) {
    for (const char* file : all_files) {
        if (std::string(file) == "VERSION") continue;
        const std::string text(embedded_text(file));
        const auto end_of_header = text.find('\n');
        const auto comma = text.find(',', end_of_header);
        ASSERT_NE(comma, std::string::npos) << file;
        const std::string start = text.substr(end_of_header, comma - end_of_header + 1);
        EXPECT_FALSE(
            SpoiltTables().change(file, start, start.substr(0, start.size() - 1)).faults().empty())
            << file;
    }
}

TEST(Catalogue, RefusesAnUnknownBasisInAnyOfItsFiles) {
    for (const char* file : all_files) {
        const std::string text(embedded_text(file));
        for (const char* basis : {",published,", ",memory,", ",derived,", ",common practice,"}) {
            if (text.find(basis) == std::string::npos) continue;
            EXPECT_TRUE(SpoiltTables().change_all(file, basis, ",hearsay,").refused(file, "basis"))
                << file << basis;
        }
    }
}

TEST(Catalogue, FindsAllFaultsOfAllFilesAtOnce) {
    SpoiltTables spoilt;
    spoilt.remove("earth/soil.csv").change("cable/rating.csv", ",C,27,", ",C,nan,");
    EXPECT_TRUE(spoilt.refused("cable/rating.csv", "nan"));
    EXPECT_TRUE(spoilt.refused("earth/soil.csv", "empty"));
}

}  // namespace
}  // namespace toft::tables
