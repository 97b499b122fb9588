#include "codec/reading.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::codec {
namespace {

Tree with_ground(const char* text) {
    Tree job = small_job();
    job["ground"] = Tree::parse(text);
    return job;
}

Tree with_electrode(const char* text) {
    Tree job = small_job();
    job["buildings"][1]["electrode"] = Tree::parse(text);
    return job;
}

Gist of_ground(const char* text) { return gist(faults_of(with_ground(text))); }
Gist of_electrode(const char* text) { return gist(faults_of(with_electrode(text))); }

site::Electrode electrode(const char* text) {
    return loaded(with_electrode(text)).buildings.at(1).electrode;
}

const std::string at = "/buildings/1/electrode";

TEST(GroundOfAJob, FactsArriveInTheirUnits) {
    const site::Ground ground = loaded(with_ground(R"({"soil": "made ground",
        "resistivity_ohm_m": {"low": 20, "high": 120, "basis": "assumed"},
        "read_when": "wet season",
        "thermal_resistivity_k_m_per_w": 2.5, "temperature_c": 20})"))
                                    .ground;
    EXPECT_EQ(ground.soil, "made ground");
    EXPECT_EQ(ground.resistivity.low, ohm_metres(20));
    EXPECT_EQ(ground.resistivity.high, ohm_metres(120));
    EXPECT_EQ(ground.resistivity.standing, site::Standing::assumed);
    EXPECT_EQ(ground.read_when, site::Season::wet);
    EXPECT_EQ(ground.thermal_resistivity.low, 2.5);
    EXPECT_EQ(ground.temperature.low, celsius(20));
}

TEST(GroundOfAJob, SoilsAreThoseOfTheTables) {
    const Faults faults = faults_of(with_ground(R"({"soil": "caly"})"));
    ASSERT_EQ(gist(faults), Gist{"/ground/soil unknown-word"});
    EXPECT_EQ(faults[0].nearest, "clay");
    EXPECT_EQ(faults[0].allowed.size(), support::catalogue().soils.size());
}

TEST(GroundOfAJob, ReadingsArriveInTheirUnits) {
    const site::Ground ground = loaded(with_ground(R"({
        "wenner": [{"spacing_m": 1, "resistance_ohm": 9.2, "pin_depth_m": 0.2},
                   {"spacing_m": 2, "resistance_ohm": 5}],
        "schlumberger": [{"current_pins_m": 6, "potential_pins_m": 0.8, "resistance_ohm": 1.5}],
        "driven_rod": [{"length_m": 1.2, "diameter_mm": 14.2, "resistance_ohm": 60}]})"))
                                    .ground;
    ASSERT_EQ(ground.pins.size(), 3u);
    EXPECT_EQ(ground.pins[0].array, site::PinArray::wenner);
    EXPECT_EQ(ground.pins[0].spacing, metres(1));
    EXPECT_EQ(ground.pins[0].pin_depth, metres(0.2));
    EXPECT_EQ(ground.pins[0].resistance, ohms(9.2));
    EXPECT_EQ(ground.pins[1].pin_depth, metres(0));
    EXPECT_EQ(ground.pins[2].array, site::PinArray::schlumberger);
    EXPECT_EQ(ground.pins[2].spacing, metres(6));
    EXPECT_EQ(ground.pins[2].potential, metres(0.8));
    EXPECT_EQ(ground.pins[2].resistance, ohms(1.5));
    ASSERT_EQ(ground.rods.size(), 1u);
    EXPECT_EQ(ground.rods[0].length, metres(1.2));
    EXPECT_EQ(ground.rods[0].diameter, millimetres(14.2));
    EXPECT_EQ(ground.rods[0].resistance, ohms(60));
}

TEST(GroundOfAJob, LayersArriveFromTheSurfaceDown) {
    const auto layers = loaded(with_ground(R"({"layers": [
        {"resistivity_ohm_m": {"low": 80, "high": 200}, "thickness_m": 1.5},
        {"resistivity_ohm_m": 30}]})"))
                            .ground.layers;
    ASSERT_EQ(layers.size(), 2u);
    EXPECT_EQ(layers[0].resistivity.high, ohm_metres(200));
    EXPECT_EQ(layers[0].thickness, metres(1.5));
    EXPECT_EQ(layers[1].resistivity.low, ohm_metres(30));
    EXPECT_FALSE(layers[1].thickness);
}

TEST(GroundOfAJob, EveryFigureOfAReadingIsCheckedAndNothingIsReadTwice) {
    EXPECT_EQ(
        of_ground(R"({"wenner": [{"spacing_m": 1, "resistance_ohm": 9}, {"spacing_m": 0},
                                       {"resistance_ohm": "9", "depth_m": 1}]})"),
        (Gist{"/ground/wenner/1/spacing_m out-of-range", "/ground/wenner/1/resistance_ohm missing",
              "/ground/wenner/2/spacing_m missing", "/ground/wenner/2/resistance_ohm wrong-kind",
              "/ground/wenner/2/depth_m unknown-key"}));
    EXPECT_EQ(of_ground(R"({"wenner": [{"spacing_m": -1, "resistance_ohm": -9}]})"),
              (Gist{"/ground/wenner/0/spacing_m out-of-range",
                    "/ground/wenner/0/resistance_ohm out-of-range"}));
    EXPECT_EQ(
        of_ground(R"({"driven_rod": [{"length_m": -1.2, "diameter_mm": 0,
                                            "resistance_ohm": -1}, {}]})"),
        (Gist{"/ground/driven_rod/0/length_m out-of-range",
              "/ground/driven_rod/0/diameter_mm out-of-range",
              "/ground/driven_rod/0/resistance_ohm out-of-range",
              "/ground/driven_rod/1/length_m missing", "/ground/driven_rod/1/diameter_mm missing",
              "/ground/driven_rod/1/resistance_ohm missing"}));
}

TEST(GroundOfAJob, ReadingsGoFromTheNearestToTheFarthest) {
    EXPECT_EQ(of_ground(R"({"wenner": [{"spacing_m": 2, "resistance_ohm": 9},
                                       {"spacing_m": 1, "resistance_ohm": 20},
                                       {"spacing_m": 1, "resistance_ohm": 21}]})"),
              Gist{"/ground/wenner/1/spacing_m out-of-order"});
    EXPECT_EQ(of_ground(R"({"schlumberger": [
                  {"current_pins_m": 20, "potential_pins_m": 1, "resistance_ohm": 0.2},
                  {"current_pins_m": 10, "potential_pins_m": 1, "resistance_ohm": 1}]})"),
              Gist{"/ground/schlumberger/1/current_pins_m out-of-order"});
}

TEST(GroundOfAJob, PotentialPinsStandBetweenTheCurrentPins) {
    for (const char* potential : {"6", "9"}) {
        const std::string text = std::string(R"({"schlumberger": [{"current_pins_m": 6,
            "potential_pins_m": )") +
                                 potential + R"(, "resistance_ohm": 1}]})";
        EXPECT_EQ(of_ground(text.c_str()),
                  Gist{"/ground/schlumberger/0/potential_pins_m contradiction"});
    }
}

TEST(GroundOfAJob, PinsDrivenHalfAsDeepAsTheyStandApartAreRods) {
    EXPECT_EQ(of_ground(R"({"wenner": [{"spacing_m": 1, "resistance_ohm": 9,
                                        "pin_depth_m": 0.5}]})"),
              Gist{"/ground/wenner/0/pin_depth_m contradiction"});
    EXPECT_EQ(of_ground(R"({"wenner": [{"spacing_m": 1, "resistance_ohm": 9,
                                        "pin_depth_m": 0.49}]})"),
              Gist{});
}

TEST(GroundOfAJob, EveryLayerButTheDeepestHasAThickness) {
    EXPECT_EQ(of_ground(R"({"layers": [{"resistivity_ohm_m": 80}, {"resistivity_ohm_m": 30}]})"),
              Gist{"/ground/layers/0/thickness_m missing"});
    EXPECT_EQ(of_ground(R"({"layers": [{"resistivity_ohm_m": 80, "thickness_m": 1},
                                       {"resistivity_ohm_m": 30, "thickness_m": 1}]})"),
              Gist{"/ground/layers/1/thickness_m contradiction"});
    EXPECT_EQ(of_ground(R"({"layers": [{"thickness_m": 1}, {"resistivity_ohm_m": -30}]})"),
              (Gist{"/ground/layers/0/resistivity_ohm_m missing",
                    "/ground/layers/1/resistivity_ohm_m out-of-range"}));
}

TEST(GroundOfAJob, OneThingIsNotStatedTwice) {
    EXPECT_EQ(of_ground(R"({"resistivity_ohm_m": 50, "layers": [{"resistivity_ohm_m": 80}]})"),
              Gist{"/ground/layers contradiction"});
    EXPECT_EQ(of_ground(R"({"layers": [{"resistivity_ohm_m": 80}],
                            "wenner": [{"spacing_m": 1, "resistance_ohm": 9}]})"),
              Gist{"/ground/layers contradiction"});
    EXPECT_EQ(of_ground(R"({"resistivity_ohm_m": 50,
                            "wenner": [{"spacing_m": 1, "resistance_ohm": 9}]})"),
              Gist{})
        << "readings go before a figure";
}

TEST(GroundOfAJob, ASeasonIsWetOrDry) {
    const Faults faults = faults_of(with_ground(R"({"read_when": "wet seasn"})"));
    ASSERT_EQ(gist(faults), Gist{"/ground/read_when unknown-word"});
    EXPECT_EQ(faults[0].allowed, (std::vector<std::string>{"wet season", "dry season"}));
    EXPECT_FALSE(loaded(with_ground(R"({"read_when": null})")).ground.read_when);
}

TEST(ElectrodeOfAJob, RodsArriveInTheirUnits) {
    const site::Electrode e = electrode(R"({"rods": 3, "arrangement": "triangle", "spacing_m": 2.4,
        "length_m": 1.2, "diameter_mm": 16, "depth_m": 0.3, "from_house_earth_m": 12})");
    EXPECT_EQ(e.kind, site::ElectrodeKind::rods);
    EXPECT_EQ(e.rods.low, 3);
    EXPECT_EQ(e.arrangement, site::Arrangement::triangle);
    EXPECT_EQ(e.spacing.low, metres(2.4));
    EXPECT_EQ(e.length.low, metres(1.2));
    EXPECT_EQ(e.diameter.low, millimetres(16));
    EXPECT_EQ(e.depth.low, metres(0.3));
    EXPECT_EQ(e.from_house_earth.low, metres(12));
}

TEST(ElectrodeOfAJob, MeshesAndFoundationsArriveInTheirUnits) {
    const site::Electrode mesh = electrode(R"({"kind": "mesh", "length_m": 6, "width_m": 3,
        "meshes_along": 4, "meshes_across": 2, "depth_m": 0.5})");
    EXPECT_EQ(mesh.kind, site::ElectrodeKind::mesh);
    EXPECT_EQ(mesh.width.low, metres(3));
    EXPECT_EQ(mesh.meshes_along, 4);
    EXPECT_EQ(mesh.meshes_across, 2);
    const site::Electrode foundation =
        electrode(R"({"kind": "foundation", "length_m": 20, "width_m": 0.4, "membrane": false})");
    EXPECT_EQ(foundation.kind, site::ElectrodeKind::foundation);
    EXPECT_EQ(foundation.membrane, site::Answer::no);
    EXPECT_EQ(electrode(R"({"resistance_ohm": {"value": 88, "basis": "declared"}})").resistance.low,
              ohms(88));
}

TEST(ElectrodeOfAJob, SpikesArriveInTheirUnits) {
    const auto spikes = electrode(R"({"fall_of_potential": [
        {"current_m": 30, "potential_m": 15, "resistance_ohm": 40},
        {"current_m": 30, "potential_m": 18.5, "resistance_ohm": 42}]})")
                            .spikes;
    ASSERT_EQ(spikes.size(), 2u);
    EXPECT_EQ(spikes[1].current, metres(30));
    EXPECT_EQ(spikes[1].potential, metres(18.5));
    EXPECT_EQ(spikes[1].resistance, ohms(42));
}

TEST(ElectrodeOfAJob, KeysOfAnotherKindContradictIt) {
    struct Row {
        const char* kind;
        const char* key;
        const char* value;
    };
    for (const Row& row : {Row{"ring", "rods", "2"}, Row{"plate", "arrangement", "\"line\""},
                           Row{"buried wire", "spacing_m", "2"}, Row{"rods", "meshes_along", "2"},
                           Row{"plate", "meshes_across", "2"}, Row{"rods", "membrane", "false"},
                           Row{"rods", "width_m", "1"}, Row{"ring", "width_m", "1"}}) {
        const std::string text = std::string(R"({"kind": ")") + row.kind +
                                 R"(", "length_m": 3, ")" + row.key + "\": " + row.value + "}";
        EXPECT_EQ(of_electrode(text.c_str()), Gist{at + "/" + row.key + " contradiction"})
            << row.kind;
    }
}

TEST(ElectrodeOfAJob, RodsThatTouchAreOne) {
    EXPECT_EQ(of_electrode(R"({"rods": 2, "spacing_m": 0.016, "diameter_mm": 16})"),
              Gist{at + "/spacing_m contradiction"});
    EXPECT_EQ(of_electrode(R"({"rods": 2, "spacing_m": 0.1, "diameter_mm": 16})"), Gist{});
}

TEST(ElectrodeOfAJob, ATriangleHasThreeRodsAndASquareFour) {
    EXPECT_EQ(of_electrode(R"({"rods": 2, "arrangement": "triangle"})"),
              Gist{at + "/arrangement contradiction"});
    EXPECT_EQ(of_electrode(R"({"arrangement": "triangle"})"),
              Gist{at + "/arrangement contradiction"});
    EXPECT_EQ(of_electrode(R"({"rods": 3, "arrangement": "square"})"),
              Gist{at + "/arrangement contradiction"});
    EXPECT_EQ(of_electrode(R"({"rods": 4, "arrangement": "square"})"), Gist{});
}

TEST(ElectrodeOfAJob, AWireMayBeLongerThanARod) {
    EXPECT_EQ(of_electrode(R"({"length_m": 31})"), Gist{at + "/length_m out-of-range"});
    EXPECT_EQ(of_electrode(R"({"kind": "buried wire", "length_m": 200})"), Gist{});
    EXPECT_EQ(of_electrode(R"({"kind": "buried wire", "length_m": 201})"),
              Gist{at + "/length_m out-of-range"});
}

TEST(ElectrodeOfAJob, NoWireLiesAboveGround) {
    EXPECT_EQ(of_electrode(R"({"kind": "buried wire", "length_m": 9, "depth_m": -0.5})"),
              Gist{at + "/depth_m out-of-range"});
}

TEST(ElectrodeOfAJob, WhatIsNoRodNeedsItsLengthOrItsReading) {
    for (const char* kind : {"buried wire", "ring", "plate", "mesh", "foundation"}) {
        const std::string bare = std::string(R"({"kind": ")") + kind + "\"";
        EXPECT_EQ(of_electrode((bare + "}").c_str()), Gist{at + "/length_m missing"}) << kind;
        EXPECT_EQ(of_electrode((bare + R"(, "resistance_ohm": 30})").c_str()), Gist{}) << kind;
    }
}

TEST(ElectrodeOfAJob, ThePotentialSpikeStandsBetweenElectrodeAndCurrentSpike) {
    EXPECT_EQ(of_electrode(R"({"fall_of_potential": [
                  {"current_m": 30, "potential_m": 30, "resistance_ohm": 40}]})"),
              Gist{at + "/fall_of_potential/0/potential_m contradiction"});
}

TEST(ElectrodeOfAJob, OneTestHasOnePlaceOfTheCurrentSpike) {
    EXPECT_EQ(of_electrode(R"({"fall_of_potential": [
                  {"current_m": 30, "potential_m": 15, "resistance_ohm": 40},
                  {"current_m": 40, "potential_m": 18, "resistance_ohm": 41}]})"),
              Gist{at + "/fall_of_potential/1/current_m contradiction"});
    EXPECT_EQ(of_electrode(R"({"fall_of_potential": [
                  {"current_m": 30, "potential_m": 18, "resistance_ohm": 40},
                  {"current_m": 30, "potential_m": 15, "resistance_ohm": 39}]})"),
              Gist{at + "/fall_of_potential/1/potential_m out-of-order"});
}

TEST(ElectrodeOfAJob, NoFigureIsNegativeOrAbsurd) {
    for (const char* key : {"rods", "spacing_m", "length_m", "diameter_mm", "depth_m",
                            "resistance_ohm", "from_house_earth_m"}) {
        for (const char* figure : {"-1", "1e9"}) {
            const std::string text = std::string("{\"") + key + "\": " + figure + "}";
            EXPECT_EQ(of_electrode(text.c_str()), Gist{at + "/" + key + " out-of-range"});
        }
    }
}

/// Faults that know nothing of each other, each with what brings it about.
struct Slip {
    const char* fault;
    void (*make)(Tree& job);
};

const std::vector<Slip>& slips() {
    static const std::vector<Slip> all{
        {"/ground/soil unknown-word", [](Tree& job) { job["ground"]["soil"] = "caly"; }},
        {"/ground/wenner/1/spacing_m out-of-order",
         [](Tree& job) { job["ground"]["wenner"][1]["spacing_m"] = 0.5; }},
        {"/ground/driven_rod/0/length_m missing",
         [](Tree& job) { job["ground"]["driven_rod"][0].erase("length_m"); }},
        {"/ground/read_when unknown-word", [](Tree& job) { job["ground"]["read_when"] = "wet"; }},
        {"/buildings/1/electrode/spacing_m contradiction",
         [](Tree& job) { job["buildings"][1]["electrode"]["spacing_m"] = 0.006; }},
        {"/buildings/1/electrode/arrangement contradiction",
         [](Tree& job) { job["buildings"][1]["electrode"]["arrangement"] = "square"; }},
        {"/buildings/1/electrode/fall_of_potential/0/potential_m contradiction", [](Tree& job) {
             job["buildings"][1]["electrode"]["fall_of_potential"][0]["potential_m"] = 99;
         }}};
    return all;
}

Tree faultless() {
    Tree job = with_ground(R"({"soil": "clay", "read_when": "wet season",
        "wenner": [{"spacing_m": 1, "resistance_ohm": 9}, {"spacing_m": 2, "resistance_ohm": 4}],
        "driven_rod": [{"length_m": 1.2, "diameter_mm": 14.2, "resistance_ohm": 60}]})");
    job["buildings"][1]["electrode"] = Tree::parse(R"({"rods": 3, "arrangement": "triangle",
        "spacing_m": 2, "fall_of_potential": [
        {"current_m": 30, "potential_m": 15, "resistance_ohm": 40}]})");
    return job;
}

RC_GTEST_PROP(FaultsOfTheGround, AllAreSaidAtOnceAndNoOther, ()) {
    Tree job = faultless();
    Gist expected;
    for (const Slip& slip : slips()) {
        if (!*rc::gen::arbitrary<bool>()) continue;
        slip.make(job);
        expected.push_back(slip.fault);
    }
    Gist said = gist(faults_of(job));
    std::sort(said.begin(), said.end());
    std::sort(expected.begin(), expected.end());
    RC_ASSERT(said == expected);
}

}  // namespace
}  // namespace toft::codec
