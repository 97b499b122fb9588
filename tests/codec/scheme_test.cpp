#include "codec/scheme.h"

#include "codec/schema_walk.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>

namespace toft::codec {
namespace {

/// A scheme with every part filled in.
answer::SchemeAnswer full_scheme() {
    answer::SchemeAnswer s;
    s.rank = 2;
    s.key = "a/b";
    s.price.net = 610.123456789;
    s.building.id = "shed";
    s.building.earthing = "own electrode";
    s.building.bonding = {{"water pipe", 10, 16}};
    s.building.electrode = answer::ElectrodeAnswer{2, 2.4, 71.5, true};
    s.building.rcds = {{30, "A", false, {"Sockets", "Lights"}}};
    s.run.id = "feed";
    s.run.cpc_mm2 = 10;
    s.run.separate_mm2 = 16;
    s.run.core_list = {{"brown", "", "line"}, {"grey", "blue", "neutral"}};
    s.run.armour_far = true;
    s.run.device = {"BS EN 60898", "C", "breaker", 32, 6};
    s.run.rcd = answer::RcdAnswer{100, "A", true, {"the run"}};
    s.run.figures.factors = {{0.5, 0.8, 1, 1, 0.98, 0.9}};
    s.run.figures.longest_m = {{"voltage-drop", 44}};
    s.conditional_on = {"/intake/ze_ohm"};
    s.tell = {{"the operator", "before", "because"}};
    s.feeds = "shed from the house";
    s.not_built = {"other"};
    s.trenches = {{"drive", "feed", {"second"}, "second shares it"}};
    return s;
}

TEST(SchemeAsJson, HasItsBuildingAndItsRunByTheirIds) {
    const Json json = scheme_json(full_scheme());
    EXPECT_EQ(json["rank"], 2);
    EXPECT_EQ(json["price"]["net"], 610.123457);
    EXPECT_EQ(json["conditional_on"], Json::parse(R"(["/intake/ze_ohm"])"));
    EXPECT_EQ(json["buildings"].size(), 1u);
    const Json& building = json["buildings"]["shed"];
    EXPECT_EQ(building["earthing"], "own electrode");
    EXPECT_EQ(building["bonding"][0]["required_mm2"], 10);
    EXPECT_EQ(building["bonding"][0]["size_mm2"], 16);
    EXPECT_EQ(building["electrode"]["largest_ohm"], 71.5);
    EXPECT_EQ(building["board"]["rcds"][0]["covers"], Json::parse(R"(["Sockets", "Lights"])"));
    const Json& run = json["runs"]["feed"];
    EXPECT_EQ(run["cores"][0]["sleeve"], nullptr);
    EXPECT_EQ(run["cores"][1]["sleeve"], "blue");
    EXPECT_EQ(run["armour_earthed_at"], Json::parse(R"({"near": true, "far": true})"));
    EXPECT_EQ(run["separate_conductor_mm2"], 16);
    EXPECT_EQ(run["device"]["curve"], "C");
    EXPECT_EQ(run["rcd"]["delayed"], true);
    EXPECT_EQ(run["figures"]["factors"][0]["cg"], 0.8);
    EXPECT_EQ(run["figures"]["longest_m"]["voltage-drop"], 44);
    EXPECT_EQ(json["tell"][0]["who"], "the operator");
}

TEST(SchemeAsJson, WhatIsNotThereIsNull) {
    const Json json = scheme_json({});
    EXPECT_EQ(json["buildings"][""]["electrode"], nullptr);
    const Json& run = json["runs"][""];
    for (const char* key : {"separate_conductor_mm2", "bond_equivalent_mm2", "rcd"}) {
        EXPECT_TRUE(run.at(key).is_null()) << key;
    }
    EXPECT_TRUE(run["cable"]["cpc_mm2"].is_null());
    EXPECT_TRUE(run["device"]["curve"].is_null());
    EXPECT_TRUE(run["figures"]["disconnection_s"].is_null());
    EXPECT_EQ(json["findings"], Json::array());
    EXPECT_EQ(json["tell"], Json::array());
    EXPECT_FALSE(json.contains("not_built")) << "only where there is a choice";
}

TEST(SchemeAsJson, StatesEveryKeyOfItsSchema) {
    const Json json = scheme_json(full_scheme());
    const Tree schema = schema_named("answer").at("$defs").at("scheme");
    for (const auto& [key, inner] : schema.at("properties").items()) {
        EXPECT_TRUE(json.contains(key)) << key;
    }
    EXPECT_EQ(json.size(), schema.at("properties").size());
}

TEST(Rounding, KeepsNineDigitsAndWhatIsEndless) {
    EXPECT_EQ(rounded(1.0 / 3), 0.333333333);
    EXPECT_EQ(rounded(123456789012.0), 123456789000.0);
    EXPECT_EQ(rounded(0), 0);
    EXPECT_TRUE(std::isinf(rounded(std::numeric_limits<double>::infinity())));
    EXPECT_TRUE(finite(std::numeric_limits<double>::infinity()).is_null());
    EXPECT_TRUE(finite(std::nan("")).is_null());
    EXPECT_EQ(finite(2.5), 2.5);
}

RC_GTEST_PROP(Rounding, IsThatOfTheStandardLibrary, (double x, int power)) {
    const double sized = std::ldexp(x, power % 200);
    for (const double y : {x, sized}) {
        if (!std::isfinite(y)) continue;
        char text[40];
        std::snprintf(text, sizeof text, "%.9g", y);
        RC_ASSERT(rounded(y) == std::strtod(text, nullptr));
    }
}

RC_GTEST_PROP(Rounding, IsCloseAndDoneOnce, (double x)) {
    RC_PRE(std::isfinite(x));
    RC_ASSERT(rounded(rounded(x)) == rounded(x));
    RC_ASSERT(std::abs(rounded(x) - x) <= 1e-8 * std::abs(x));
}

}  // namespace
}  // namespace toft::codec
