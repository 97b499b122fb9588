#include "codec/reading.h"

namespace toft::codec {
namespace {

/// The small job whose shed also states `text`.
Tree shed_with(const char* text) {
    Tree job = small_job();
    job["buildings"][1].update(Tree::parse(text));
    return job;
}

site::Building shed(const char* text) { return loaded(shed_with(text)).buildings.at(1); }
Gist said(const char* text) { return gist(faults_of(shed_with(text))); }

TEST(BuildingOfAJob, FactsArriveInTheirUnits) {
    const site::Building b = shed(R"({"name": "Potting shed", "use": "animal house",
        "construction": "steel frame", "stands_in_ground": true, "at_m": [24, -6.5],
        "reach_of_house_earth_m": {"low": 2, "high": 3}, "spare_ways": 2, "future_load_a": 10,
        "power_factor": 0.9, "livestock": true, "wet_floor": false,
        "electrode": {"rods": 2, "length_m": 2.4, "diameter_mm": 14.2, "resistance_ohm": 60}})");
    EXPECT_EQ(b.name, "Potting shed");
    EXPECT_EQ(b.use, site::Use::animal_house);
    EXPECT_EQ(b.construction, site::Construction::steel_frame);
    EXPECT_EQ(b.stands_in_ground, site::Answer::yes);
    EXPECT_EQ(b.at_x_m, 24);
    EXPECT_EQ(b.at_y_m, -6.5);
    EXPECT_EQ(b.reach_of_house_earth.low, metres(2));
    EXPECT_EQ(b.reach_of_house_earth.high, metres(3));
    EXPECT_EQ(b.future_load.low, amperes(10));
    EXPECT_EQ(b.load.low, amperes(10));
    EXPECT_EQ(b.livestock, site::Answer::yes);
    EXPECT_EQ(b.wet_floor, site::Answer::no);
    EXPECT_EQ(b.barefoot, site::Answer::unknown);
    EXPECT_EQ(b.electrode.rods.low, 2);
    EXPECT_EQ(b.electrode.diameter.low, millimetres(14.2));
    EXPECT_EQ(b.electrode.resistance.low, ohms(60));
    EXPECT_FALSE(b.origin);
}

TEST(BuildingOfAJob, MetalIsReadWithWhatIsNotKnownLeftOpen) {
    const site::Building b = shed(R"({"metalwork": [
        {"what": "oil pipe", "material": "steel", "comes_from": "house", "bonded_at_house": true},
        {"what": "frame", "resistance_to_met_kohm": 22}]})");
    ASSERT_EQ(b.metalwork.size(), 2u);
    EXPECT_EQ(b.metalwork[0].what, site::Metal::oil_pipe);
    EXPECT_EQ(b.metalwork[0].comes_from, site::ComesFrom::house);
    EXPECT_EQ(b.metalwork[0].bonded_at_house, site::Answer::yes);
    EXPECT_EQ(b.metalwork[0].insulating_section, site::Answer::unknown);
    EXPECT_FALSE(b.metalwork[0].resistance_to_met.known);
    EXPECT_EQ(b.metalwork[1].resistance_to_met.low, ohms(22000));
}

TEST(BuildingOfAJob, AnEmptyListOfMetalIsASurveyAndNoListIsNone) {
    EXPECT_TRUE(shed(R"({"metalwork": []})").metalwork_surveyed);
    EXPECT_FALSE(shed(R"({"metalwork": null})").metalwork_surveyed);
    EXPECT_FALSE(shed("{}").metalwork_surveyed);
}

TEST(BuildingOfAJob, ItsPlaceIsTwoNumbersWithinReach) {
    for (const char* place :
         {R"({"at_m": 3})", R"({"at_m": [1]})", R"({"at_m": [1, 2, 3]})", R"({"at_m": [1, "2"]})",
          R"({"at_m": [1, null]})", R"({"at_m": [1, 2001]})", R"({"at_m": [-2001, 1]})"}) {
        EXPECT_EQ(said(place), Gist{"/buildings/1/at_m wrong-kind"}) << place;
    }
    EXPECT_FALSE(shed(R"({"at_m": null})").at_x_m);
}

TEST(BuildingOfAJob, ALoadIsAmperesOrWattsOrItsCircuits) {
    EXPECT_EQ(said(R"({"load_w": 3000})"), Gist{"/buildings/1/load_w contradiction"});
    EXPECT_EQ(said(R"({"load_a": null})"), Gist{"/buildings/1 no-load"});
    EXPECT_EQ(said(R"({"load_a": null, "circuits": [{"name": "x", "kind": "pump"}]})"),
              Gist{"/buildings/1/circuits/0 no-load"});
    EXPECT_EQ(shed(R"({"load_a": null, "load_w": 3000})").load_w.low, 3000);
    for (const char* load : {R"({"load_a": -5})", R"({"load_a": 0})"}) {
        EXPECT_EQ(said(load), Gist{"/buildings/1/load_a out-of-range"}) << load;
    }
}

TEST(BuildingOfAJob, CircuitsAreReadAndWhatIsNotJudgedIsSaid) {
    const site::Job job = loaded(shed_with(R"({"circuits": [
        {"name": "Saw", "kind": "motor", "load_w": 1500, "power_factor": 0.8, "length_m": 9,
         "starting_multiple": 6, "starts_per_hour": 10},
        {"name": "Sockets", "kind": "socket ring", "loop_length_m": 28, "continuous": false,
         "device": {"standard": "BS EN 61009", "curve": "B", "rating_a": 32},
         "cable": {"family": "flat twin and earth", "live_mm2": 2.5, "cpc_mm2": 1.5}}]})"));
    const auto& circuits = job.buildings.at(1).circuits;
    ASSERT_EQ(circuits.size(), 2u);
    EXPECT_EQ(circuits[0].kind, site::CircuitKind::motor);
    EXPECT_EQ(circuits[0].load_w.low, 1500);
    EXPECT_EQ(circuits[0].length.low, metres(9));
    EXPECT_FALSE(circuits[0].device);
    ASSERT_TRUE(circuits[1].device);
    EXPECT_EQ(circuits[1].device->curve, "B");
    EXPECT_EQ(circuits[1].device->rating, amperes(32));
    EXPECT_TRUE(job.unused.empty());
}

TEST(BuildingOfAJob, FaultsOfItsPartsHaveTheirPointer) {
    EXPECT_EQ(
        said(R"({"metalwork": [{"what": "water pip"}, {}, 3],
                       "electrode": {"rods": 1.5, "lenght_m": 2},
                       "circuits": [{"name": "", "kind": "heater", "device": {"curve": "E"},
                                     "cable": {"live_mm2": -1, "colour": "red"}}]})"),
        (Gist{"/buildings/1/metalwork/2 wrong-kind", "/buildings/1/metalwork/0/what unknown-word",
              "/buildings/1/metalwork/1/what missing", "/buildings/1/electrode/rods out-of-range",
              "/buildings/1/electrode/lenght_m unknown-key",
              "/buildings/1/circuits/0/name out-of-range",
              "/buildings/1/circuits/0/kind unknown-word",
              "/buildings/1/circuits/0/device/standard missing",
              "/buildings/1/circuits/0/device/curve unknown-word",
              "/buildings/1/circuits/0/device/rating_a missing",
              "/buildings/1/circuits/0/cable/family missing",
              "/buildings/1/circuits/0/cable/live_mm2 out-of-range",
              "/buildings/1/circuits/0/cable/colour unknown-key"}));
}

TEST(BuildingOfAJob, ASourceMayKeepASupplyAndOfNothingElseItIsUsed) {
    const char* sources = R"({"circuits": [{"name": "store", "kind": "battery",
        "keeps_supply": "building"}, {"name": "roof", "kind": "solar"}]})";
    const auto b = shed(sources);
    EXPECT_EQ(b.circuits[0].keeps_supply, site::KeepsSupply::building);
    EXPECT_FALSE(b.circuits[1].keeps_supply);
    EXPECT_TRUE(loaded(shed_with(sources)).unused.empty());
    EXPECT_EQ(said(R"({"circuits": [{"name": "store", "kind": "battery",
        "keeps_supply": "everything"}]})"),
              Gist{"/buildings/1/circuits/0/keeps_supply unknown-word"});
    const auto kettle = loaded(shed_with(R"({"circuits": [{"name": "kettle",
        "kind": "fixed load", "load_w": 2000, "keeps_supply": "house"}]})"));
    ASSERT_EQ(kettle.unused.size(), 1u);
    EXPECT_NE(kettle.unused[0].find("circuit kettle: only solar and batteries"), std::string::npos);
}

TEST(BuildingOfAJob, WhatTheHousesBatteryDoesToTheRunIsSaidToBeLeftOut) {
    const auto job = loaded(small_with("/buildings/0/circuits", Tree::parse(R"([{"name": "wall",
        "kind": "battery", "load_w": 3000, "keeps_supply": "house"}])")));
    ASSERT_EQ(job.unused.size(), 1u);
    EXPECT_NE(job.unused[0].find("are not judged"), std::string::npos);
}

}  // namespace
}  // namespace toft::codec
