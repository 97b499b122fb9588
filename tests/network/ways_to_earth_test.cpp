#include "network/ways_to_earth.h"

#include "support/draws.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::network {
namespace {

constexpr WayToEarth ways[] = {WayToEarth::carried, WayToEarth::carried_and_added, WayToEarth::own};

TwoEarths<Silent> earths(double house, double outbuilding, double k, double load = 17.6) {
    return {ohms(house), ohms(outbuilding), k, ohms(load), volts(230)};
}

OutbuildingEarth<Silent> at(WayToEarth way, const TwoEarths<Silent>& e) {
    Silent ledger;
    return outbuilding_earth(ledger, way, e);
}

TEST(WaysToEarth, CarriedMetalHasAllThatTheHouseHas) {
    const auto found = at(WayToEarth::carried, earths(20, 70, 0.1));
    EXPECT_NEAR(found.metal.number(), 122.3, 0.1);
    EXPECT_EQ(found.metal, found.house);
    EXPECT_EQ(found.electrode, amperes(0));
}

TEST(WaysToEarth, AnAddedElectrodeLowersBothAndCarriesItsPart) {
    const auto carried = at(WayToEarth::carried, earths(20, 20, 0));
    const auto added = at(WayToEarth::carried_and_added, earths(20, 20, 0));
    EXPECT_LT(added.metal, carried.metal);
    EXPECT_NEAR(added.metal.number(), 230 * 10 / 27.6, 1e-9);
    EXPECT_NEAR(added.electrode.number(), added.metal.number() / 20, 1e-9);
    EXPECT_EQ(added.house, added.metal);
}

TEST(WaysToEarth, AnElectrodeInsideTheHousesEarthAddsNothing) {
    const auto carried = at(WayToEarth::carried, earths(20, 60, 0));
    const auto added = at(WayToEarth::carried_and_added, earths(20, 60, 1));
    EXPECT_NEAR(added.metal.number(), carried.metal.number(), 1e-9);
    EXPECT_NEAR(added.electrode.number(), 0, 1e-9);
    const auto same = at(WayToEarth::carried_and_added, earths(20, 20, 1));
    EXPECT_NEAR(same.metal.number(), carried.metal.number(), 1e-9);
}

TEST(WaysToEarth, AnOwnElectrodeTakesOnlyWhatTheGroundBringsOver) {
    const auto own = at(WayToEarth::own, earths(20, 70, 0.05));
    EXPECT_NEAR(own.metal.number(), 0.05 * own.house.number(), 1e-12);
    EXPECT_EQ(at(WayToEarth::own, earths(20, 70, 0)).metal, volts(0));
}

TEST(WaysToEarth, WritesWorkingThatHolds) {
    for (WayToEarth way : ways) {
        Recording ledger;
        TwoEarths<Recording> e;
        e.house = ledger.stated({"R11", ""}, ohms(12), "");
        e.outbuilding = ledger.stated({"R22", ""}, ohms(80), "");
        e.transferred = ledger.stated({"k", ""}, 0.1, "");
        e.load = ledger.stated({"Z", ""}, ohms(10), "");
        e.source = ledger.stated({"E", ""}, volts(253), "");
        const auto found = outbuilding_earth(ledger, way, e);
        TwoEarths<Silent> plainly = earths(12, 80, 0.1, 10);
        plainly.source = volts(253);
        EXPECT_EQ(found.metal.value, at(way, plainly).metal);
        for (const std::string& wrong : support::wrong_lines(ledger.lines())) {
            ADD_FAILURE() << wrong;
        }
    }
}

TwoEarths<Silent> any_earths() {
    return {ohms(support::drawn_between(0.5, 150)), ohms(support::drawn_between(0.5, 150)),
            support::drawn_between(0, 1), ohms(support::drawn_between(1, 100)),
            volts(support::drawn_between(207, 253))};
}

RC_GTEST_PROP(WaysToEarthLaws, MetalMovesOneWayWithEveryFigure, ()) {
    const TwoEarths<Silent> e = any_earths();
    const double factor = support::drawn_between(1, 3);
    TwoEarths<Silent> changed[5] = {e, e, e, e, e};
    changed[0].house = e.house * factor;
    changed[1].outbuilding = e.outbuilding * factor;
    changed[2].transferred = std::fmin(1, e.transferred * factor);
    changed[3].load = e.load / factor;
    changed[4].source = e.source * factor;
    for (WayToEarth way : ways) {
        for (const auto& other : changed) {
            RC_ASSERT(at(way, other).metal.number() >= at(way, e).metal.number() * (1 - 1e-12));
        }
    }
}

RC_GTEST_PROP(WaysToEarthLaws, AnAddedElectrodeNeverRaisesTheMetalNorPassesTheWholeCurrent, ()) {
    const TwoEarths<Silent> e = any_earths();
    const auto added = at(WayToEarth::carried_and_added, e);
    RC_ASSERT(added.metal.number() <= at(WayToEarth::carried, e).metal.number() * (1 + 1e-12));
    RC_ASSERT(added.electrode >= amperes(0));
    const Amperes all = (e.source - added.metal) / e.load;
    RC_ASSERT(added.electrode.number() <= all.number() * (1 + 1e-9));
}

RC_GTEST_PROP(WaysToEarthLaws, WhateverLiesInTheRangesLiesBetweenTheEnds, ()) {
    const TwoEarths<Silent> a = any_earths();
    const TwoEarths<Silent> b = any_earths();
    const EarthRanges ranges{
        {least(a.house, b.house), least(a.outbuilding, b.outbuilding),
         least(a.transferred, b.transferred), least(a.load, b.load), least(a.source, b.source)},
        {most(a.house, b.house), most(a.outbuilding, b.outbuilding),
         most(a.transferred, b.transferred), most(a.load, b.load), most(a.source, b.source)}};
    const TwoEarths<Silent>& low = ranges.low;
    const TwoEarths<Silent>& high = ranges.high;
    const auto inside = [](auto from, auto to) {
        return from + (to - from) * support::drawn_between(0, 1);
    };
    const TwoEarths<Silent> e{inside(low.house, high.house),
                              inside(low.outbuilding, high.outbuilding),
                              inside(low.transferred, high.transferred),
                              inside(low.load, high.load), inside(low.source, high.source)};
    for (WayToEarth way : ways) {
        const OutbuildingRange range = outbuilding_range(way, ranges);
        const auto found = at(way, e);
        RC_ASSERT(found.metal.number() >= range.metal_low.number() * (1 - 1e-9));
        RC_ASSERT(found.metal.number() <= range.metal_high.number() * (1 + 1e-9));
        RC_ASSERT(found.electrode.number() >= range.electrode_low.number() * (1 - 1e-9) - 1e-9);
        RC_ASSERT(found.electrode.number() <= range.electrode_high.number() * (1 + 1e-9));
    }
}

}  // namespace
}  // namespace toft::network
