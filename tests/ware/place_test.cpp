#include "ware/place.h"

#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using tables::GlandPlace;

class Place : public ::testing::Test {
protected:
    site::Building& far() {
        for (site::Building& b : made_.job.buildings) {
            if (b.id == made_.run().to) return b;
        }
        return made_.job.buildings.back();
    }
    site::Leg& leg() { return made_.run().legs[0]; }
    GlandPlace place() { return gland_place(made_.job, made_.run(), made_.stretch()); }

    HandMade made_;
};

TEST_F(Place, WhatIsNotStatedIsOutdoors) {
    EXPECT_EQ(place(), GlandPlace::outdoors);
    leg().method = site::LegMethod::clipped;
    leg().indoors = site::Answer::yes;
    far().wet_floor = site::Answer::unknown;
    EXPECT_EQ(place(), GlandPlace::outdoors);
}

TEST_F(Place, DryTakesARoofAllTheWayAndADryFloor) {
    leg().method = site::LegMethod::clipped;
    leg().indoors = site::Answer::yes;
    far().wet_floor = site::Answer::no;
    EXPECT_EQ(place(), GlandPlace::dry);
    leg().method = site::LegMethod::buried_direct;
    EXPECT_EQ(place(), GlandPlace::outdoors);
}

TEST_F(Place, AnimalsAndWetFloorsAskForBothSeals) {
    far().livestock = site::Answer::yes;
    EXPECT_EQ(place(), GlandPlace::wet);
    far().livestock = site::Answer::no;
    far().wet_floor = site::Answer::yes;
    EXPECT_EQ(place(), GlandPlace::wet);
    far().wet_floor = site::Answer::no;
    far().use = site::Use::stable;
    EXPECT_EQ(place(), GlandPlace::wet);
}

TEST_F(Place, AStretchBetweenJointsIsNotJudgedByTheBuildings) {
    made_.run().legs.resize(3);
    far().livestock = site::Answer::yes;
    made_.stretch().first_leg = made_.stretch().last_leg = 2;
    EXPECT_EQ(place(), GlandPlace::outdoors);
    made_.stretch().last_leg = 3;
    EXPECT_EQ(place(), GlandPlace::wet);
    made_.stretch().last_leg = 9;  // no such leg
    EXPECT_EQ(place(), GlandPlace::outdoors);
}

}  // namespace
}  // namespace toft::ware
