#include "walk/supply.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

using site::Earthing;
using support::measured;

TEST(SupplyStep, TellsWhatALostNeutralDoesOnACombinedEarthOnly) {
    const Walk combined = walked(shed_on(Earthing::tn_c_s));
    EXPECT_TRUE(holds(find_step(combined, "supply")->ruling[Choice::supply_earth].why, "break"));
    const Walk separate = walked(shed_on(Earthing::tn_s));
    EXPECT_FALSE(holds(find_step(separate, "supply")->ruling[Choice::supply_earth].why, "break"));
    EXPECT_TRUE(holds(find_step(combined, "supply")->found, "Ze: 0.2 Ω, measured"));
    const Walk own = walked(shed_on(Earthing::tt));
    EXPECT_TRUE(holds(find_step(own, "supply")->found, "house's electrode: 60 Ω"));
}

TEST(SupplyStep, ASeparateEarthIsNeverTakenAsProved) {
    const Walk w = walked(shed_on(Earthing::tn_s));
    ASSERT_NE(find_step(w, "stays-separate"), nullptr);
    EXPECT_EQ(find_step(w, "stays-separate")->ruling.known, Known::unknown);
    EXPECT_EQ(find_step(walked(shed_on(Earthing::tn_c_s)), "stays-separate"), nullptr);
    EXPECT_EQ(find_step(walked(shed_on(Earthing::tt)), "stays-separate"), nullptr);
}

TEST(SupplyStep, BondsOfTheHouseThatAreTooSmallSpeakAgainstExtendingItsEarth) {
    site::Job job = support::plain_job();
    EXPECT_EQ(bearing_of(walked(job), "house-bonds", Choice::supply_earth), Bearing::neutral);
    job.intake.main_bonding = measured(square_millimetres(6));
    EXPECT_EQ(bearing_of(walked(job), "house-bonds", Choice::supply_earth),
              Bearing::speaks_against);
    EXPECT_EQ(bearing_of(walked(job), "house-bonds", Choice::own_electrode), Bearing::neutral);
    job.intake.main_bonding = {};
    const Walk w = walked(job);
    EXPECT_EQ(bearing_of(w, "house-bonds", Choice::supply_earth), Bearing::speaks_against);
    EXPECT_EQ(find_step(w, "house-bonds")->ruling.known, Known::unknown);
}

TEST(SupplyStep, AnOrdinaryRodDoesNotHoldTheMetalDown) {
    const Walk w = walked(support::plain_job());
    EXPECT_EQ(bearing_of(w, "added-electrode", Choice::added_electrode), Bearing::neutral);
    EXPECT_TRUE(
        holds(find_step(w, "added-electrode")->ruling[Choice::added_electrode].why, "no cure"));
    site::Job steel = support::plain_job();
    steel.buildings[1].electrode.resistance = measured(ohms(0.4));
    EXPECT_EQ(bearing_of(walked(steel), "added-electrode", Choice::added_electrode),
              Bearing::speaks_for);
    EXPECT_EQ(find_step(walked(shed_on(Earthing::tt)), "added-electrode"), nullptr);
}

}  // namespace
}  // namespace toft::walk
