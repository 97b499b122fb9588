#include "lever/asking.h"

#include "demand/scenario.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

site::Circuit load(const char* name, double watts) {
    site::Circuit c;
    c.name = name;
    c.kind = site::CircuitKind::fixed_load;
    c.load_w = support::measured(watts);
    return c;
}

double demand_of(const site::Building& b) {
    Silent silent;
    const demand::Place<Silent> place{&support::catalogue().demand, volts(230), 1, ""};
    return demand::building_demand(silent, place, b, site::Scenario::likely).total.number();
}

TEST(LessLoad, OfTwoLoadsTheSecondWaitsAndTheDemandIsThatOfTheRest) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    job.buildings[1].circuits = {load("kiln", 6000), load("heater", 5000), load("lamp", 100)};
    const Changes all = changes_of(less_load, job);
    const Change* waits = change_of(all, "load-management");
    ASSERT_NE(waits, nullptr);
    EXPECT_EQ(waits->where, "heater");
    site::Building rest = job.buildings[1];
    rest.circuits = {load("kiln", 6000), load("lamp", 100)};
    EXPECT_NEAR(demand_of(waits->job.buildings[1]), demand_of(rest), 1e-9);
    EXPECT_LT(demand_of(waits->job.buildings[1]), demand_of(job.buildings[1]));
    EXPECT_EQ(waits->job.buildings[1].circuits.size(), 3u);
}

TEST(LessLoad, AChargerMayBeSetLower) {
    site::Job job = support::plain_job();
    job.buildings[1].load = {};
    site::Circuit charger = load("car", 7400);
    charger.kind = site::CircuitKind::vehicle_charging;
    job.buildings[1].circuits = {charger};
    const Changes all = changes_of(less_load, job);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].job.buildings[1].circuits[0].load_w.high, 16.0 * 230);
    EXPECT_TRUE(changes_of(less_load, all[0].job).empty());
}

TEST(LessLoad, LoadForLaterAndEverythingAtOnceAreWishes) {
    site::Job job = support::plain_job();
    job.buildings[1].future_load = support::measured(amperes(10));
    job.wishes.scenario = site::Scenario::everything;
    EXPECT_EQ(keys_of(less_load, job), (std::vector<std::string>{"no-later-load", "likely-load"}));
}

}  // namespace
}  // namespace toft::lever
