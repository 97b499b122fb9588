#include "walk/use.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

using site::Answer;
using site::Earthing;
using site::Use;

site::Job used_as(Use use, Earthing system = Earthing::tn_c_s) {
    site::Job job = shed_on(system);
    job.buildings[1].use = use;
    return job;
}

TEST(UseSteps, TheLawLeavesACaravanOnACombinedSupplyItsOwnElectrodeOnly) {
    const Walk w = walked(used_as(Use::caravan_pitch));
    EXPECT_EQ(standing_of(w, Choice::supply_earth), Standing::ruled_out);
    EXPECT_EQ(standing_of(w, Choice::added_electrode), Standing::ruled_out);
    EXPECT_EQ(bearing_of(w, "movable", Choice::own_electrode), Bearing::required);
    EXPECT_EQ(find_step(w, "movable")->basis->authority, tables::Authority::law);
}

TEST(UseSteps, ATubIsATubWhereverItStands) {
    site::Job job = used_as(Use::shed);
    EXPECT_EQ(bearing_of(walked(job), "pool", Choice::supply_earth), Bearing::neutral);
    site::Circuit tub;
    tub.kind = site::CircuitKind::hot_tub;
    tub.load_w = support::measured(3000.0);
    job.buildings[1].circuits = {tub};
    job.buildings[1].load = {};
    EXPECT_EQ(bearing_of(walked(job), "pool", Choice::supply_earth), Bearing::speaks_against);
    EXPECT_EQ(bearing_of(walked(job), "pool", Choice::own_electrode), Bearing::speaks_for);
}

TEST(UseSteps, AnimalsSpeakAgainstTheSuppliesEarthAndForAnElectrodeApart) {
    for (const Earthing system : {Earthing::tn_c_s, Earthing::tn_s}) {
        const Walk w = walked(used_as(Use::stable, system));
        EXPECT_EQ(bearing_of(w, "animals", Choice::supply_earth), Bearing::speaks_against);
        EXPECT_EQ(bearing_of(w, "animals", Choice::own_electrode), Bearing::speaks_for);
    }
    const Walk tt = walked(used_as(Use::stable, Earthing::tt));
    EXPECT_EQ(bearing_of(tt, "animals", Choice::shared_electrode), Bearing::speaks_against)
        << "a fault in the house lifts metal here until its RCD acts";
    EXPECT_EQ(bearing_of(tt, "animals", Choice::own_electrode), Bearing::speaks_for);
}

TEST(UseSteps, WhatNobodySaidCountsAsIfItWereSo) {
    struct Row {
        const char* step;
        Answer site::Building::*answer;
    };
    for (const Row& row :
         {Row{"animals", &site::Building::livestock}, Row{"wet-ground", &site::Building::wet_floor},
          Row{"wet-ground", &site::Building::barefoot},
          Row{"charging", &site::Building::vehicle_outdoors}}) {
        site::Job job = support::plain_job();
        EXPECT_EQ(bearing_of(walked(job), row.step, Choice::supply_earth), Bearing::neutral);
        for (const Answer answer : {Answer::yes, Answer::unknown}) {
            job.buildings[1].*row.answer = answer;
            const Walk w = walked(job);
            EXPECT_EQ(bearing_of(w, row.step, Choice::supply_earth), Bearing::speaks_against);
            EXPECT_EQ(find_step(w, row.step)->ruling.known == Known::unknown,
                      answer == Answer::unknown);
            EXPECT_FALSE(find_step(w, row.step)->would_change.empty());
        }
    }
}

TEST(UseSteps, OnATtSupplyAnimalsThatNobodySpokeOfCountForTheSharedElectrodeToo) {
    site::Job job = shed_on(Earthing::tt);
    job.buildings[1].livestock = Answer::no;
    EXPECT_EQ(bearing_of(walked(job), "animals", Choice::shared_electrode), Bearing::neutral);
    job.buildings[1].livestock = Answer::unknown;
    EXPECT_EQ(bearing_of(walked(job), "animals", Choice::shared_electrode),
              Bearing::speaks_against);
}

TEST(UseSteps, AnUnknownUseIsNoOrdinaryUse) {
    site::Job job = support::plain_job();
    job.buildings[1].use.reset();
    const Walk w = walked(job);
    for (const char* step : {"movable", "pool", "animals", "wet-ground"}) {
        EXPECT_EQ(bearing_of(w, step, Choice::supply_earth), Bearing::speaks_against) << step;
        EXPECT_EQ(find_step(w, step)->ruling.known, Known::unknown) << step;
    }
}

TEST(UseSteps, AVehicleOutdoorsIsToldTheWaysThatTheStandardAllows) {
    site::Job job = used_as(Use::garage);
    job.buildings[1].vehicle_outdoors = Answer::yes;
    const Walk w = walked(job);
    const Step& step = *find_step(w, "charging");
    EXPECT_EQ(step.would_change.size(), 5u);
    EXPECT_TRUE(holds(step.found, "70 V"));
    EXPECT_EQ(bearing_of(w, "charging", Choice::added_electrode), Bearing::speaks_against);
    job.buildings[1].electrode.resistance = support::measured(ohms(0.3));
    EXPECT_EQ(bearing_of(walked(job), "charging", Choice::added_electrode), Bearing::speaks_for);
    EXPECT_EQ(bearing_of(walked(job), "charging", Choice::supply_earth), Bearing::speaks_against);
}

}  // namespace
}  // namespace toft::walk
