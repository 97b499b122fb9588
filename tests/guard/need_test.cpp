#include "guard/need.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::Answer;
using site::CircuitKind;
using site::Use;

const Reason* reason(const Need& need, const std::string& key) {
    for (const Reason& r : need.reasons) {
        if (r.row->footing.key == key) return &r;
    }
    return nullptr;
}

Need need(const site::Job& job, std::size_t i = 0, bool own_electrode = false) {
    const View v = view(job, own_electrode);
    return need_of(v, circuit_at(v, i));
}

Need in_use(Use use, CircuitKind kind) {
    site::Job job = job_with({circuit(kind)});
    job.buildings[1].use = use;
    return need(job);
}

// Regulation 411.3.3 as told by a certification body ("part-four-changes").
TEST(Need, SocketsUpToThirtyTwoAmperesAskForThirtyMilliamperes) {
    for (const CircuitKind kind : {CircuitKind::socket_ring, CircuitKind::socket_radial}) {
        const Need n = need(job_with({circuit(kind)}));
        ASSERT_NE(reason(n, "sockets"), nullptr);
        EXPECT_TRUE(reason(n, "sockets")->sure);
        EXPECT_EQ(n.asked, milliamperes(30));
        EXPECT_EQ(reason(n, "sockets")->row->footing.clause, "411.3.3");
    }
}

TEST(Need, ALargerOutletIsNotASocketOfThatClause) {
    site::Circuit big = circuit(CircuitKind::socket_radial);
    big.device = site::NamedDevice{"BS EN 60898", "C", amperes(63)};
    EXPECT_EQ(reason(need(job_with({big})), "sockets"), nullptr);
    big.device->rating = amperes(32);
    EXPECT_NE(reason(need(job_with({big})), "sockets"), nullptr);
}

// Regulation 411.3.4; that an outbuilding is part of the dwelling is a reading, so it is not sure.
TEST(Need, LuminairesAskForOneByAReadingOfTheWordDwelling) {
    const Need n = need(job_with({circuit(CircuitKind::lighting)}));
    ASSERT_NE(reason(n, "luminaires"), nullptr);
    EXPECT_FALSE(reason(n, "luminaires")->sure);
    EXPECT_EQ(n.asked, milliamperes(30));
}

TEST(Need, AFixedLoadOnAClippedCableAsksForNoneAndHasOneByChoice) {
    const Need n = need(job_with({circuit(CircuitKind::fixed_load)}));
    EXPECT_FALSE(n.asked_for());
    ASSERT_EQ(n.reasons.size(), 1u);
    EXPECT_EQ(n.reasons[0].row->footing.authority, tables::Authority::habit);
}

TEST(Need, ACableThatMayBeHiddenAsksForOne) {
    site::Circuit heater = circuit(CircuitKind::fixed_load);
    heater.method.reset();
    EXPECT_FALSE(reason(need(job_with({heater})), "hidden-cable")->sure);
    heater.method = site::LegMethod::in_insulation;
    EXPECT_EQ(need(job_with({heater})).asked, milliamperes(30));
    heater.method = site::LegMethod::tray;
    EXPECT_EQ(reason(need(job_with({heater})), "hidden-cable"), nullptr);
}

// Section 705 as reprinted: sockets up to 32 A 30 mA, larger ones 100 mA, all other circuits 300
// mA.
TEST(Need, AStableAsksThirtyAHundredAndThreeHundred) {
    EXPECT_EQ(in_use(Use::stable, CircuitKind::fixed_load).asked, milliamperes(300));
    EXPECT_EQ(
        reason(in_use(Use::stable, CircuitKind::socket_radial), "farm-sockets")->row->sensitivity,
        milliamperes(30));
    site::Circuit big = circuit(CircuitKind::socket_radial);
    big.device = site::NamedDevice{"BS EN 60898", "C", amperes(63)};
    site::Job job = job_with({big});
    job.buildings[1].livestock = Answer::yes;
    EXPECT_EQ(need(job).asked, milliamperes(100));
}

TEST(Need, AGreenhouseMayBeANursery) {
    const Need n = in_use(Use::greenhouse, CircuitKind::fixed_load);
    ASSERT_NE(reason(n, "farm-rest"), nullptr);
    EXPECT_FALSE(reason(n, "farm-rest")->sure);
}

TEST(Need, SpecialLoadsAndPlacesAskForTheirOwn) {
    EXPECT_NE(reason(in_use(Use::garage, CircuitKind::vehicle_charging), "vehicle"), nullptr);
    EXPECT_TRUE(reason(in_use(Use::other, CircuitKind::hot_tub), "pool")->sure);
    EXPECT_FALSE(reason(in_use(Use::pool_house, CircuitKind::lighting), "pool")->sure);
    EXPECT_NE(reason(in_use(Use::caravan_pitch, CircuitKind::socket_radial), "caravan"), nullptr);
    EXPECT_NE(reason(in_use(Use::boat_mooring, CircuitKind::socket_radial), "boat"), nullptr);
}

TEST(Need, ASaunasHeaterIsExemptAndItsRoomIsNot) {
    const site::Job job = job_with({circuit(CircuitKind::sauna), circuit(CircuitKind::lighting)});
    EXPECT_EQ(reason(need(job, 0), "sauna"), nullptr);
    EXPECT_NE(reason(need(job, 1), "sauna"), nullptr);
}

TEST(Need, DustThatMayBurnAsksForThreeHundred) {
    site::Job job = job_with({circuit(CircuitKind::fixed_load)});
    job.buildings[1].spread_of_fire_risk = Answer::yes;
    EXPECT_TRUE(reason(need(job), "fire")->sure);
    EXPECT_EQ(need(job).asked, milliamperes(300));
    job.buildings[1].spread_of_fire_risk = Answer::unknown;
    EXPECT_EQ(reason(need(job), "fire"), nullptr);
    job.buildings[1].use = Use::workshop;
    EXPECT_FALSE(reason(need(job), "fire")->sure);
}

TEST(Need, OnAnElectrodeEveryCircuitNeedsOne) {
    const site::Job job = job_with({circuit(CircuitKind::fixed_load)});
    EXPECT_FALSE(need(job).asked_for());
    EXPECT_TRUE(need(job, 0, true).asked_for());
}

TEST(Need, WhatNobodyDescribedIsTakenForSockets) {
    const Need n = need(support::plain_job());
    ASSERT_NE(reason(n, "sockets"), nullptr);
    EXPECT_FALSE(reason(n, "sockets")->sure);
}

TEST(Need, NothingAskedForIsMoreSensitiveThanWhatIsFitted) {
    for (const std::string& kind : site::words<CircuitKind>()) {
        for (std::size_t u = 0; u < site::words<Use>().size(); ++u) {
            site::Circuit c = circuit(CircuitKind::fixed_load);
            for (std::size_t k = 0; k < site::words<CircuitKind>().size(); ++k) {
                if (site::words<CircuitKind>()[k] == kind) c.kind = static_cast<CircuitKind>(k);
            }
            site::Job job = job_with({c});
            job.buildings[1].use = static_cast<Use>(u);
            const Need n = need(job);
            EXPECT_FALSE(n.reasons.empty());
            if (!n.asked_for()) continue;
            EXPECT_GE(n.asked, circuit_sensitivity(view(job))) << kind;
        }
    }
}

}  // namespace
}  // namespace toft::guard
