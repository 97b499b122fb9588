#include "guard/sort.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::Answer;
using site::CircuitKind;
using site::RcdType;

Sort sorted(const site::Circuit& c) {
    const site::Job job = job_with({c});
    return sort_of(view(job), c);
}

site::Circuit driven(CircuitKind kind, int phases, Answer drive = Answer::yes) {
    site::Circuit c = circuit(kind);
    c.phases = phases;
    c.drive = drive;
    return c;
}

TEST(Sort, TypeAIsTheLeastForEveryKind) {
    for (std::size_t k = 0; k < site::words<CircuitKind>().size(); ++k) {
        for (const Answer drive : {Answer::no, Answer::unknown, Answer::yes}) {
            const Sort s = sorted(driven(static_cast<CircuitKind>(k), 1, drive));
            EXPECT_GE(s.type, RcdType::a);
            EXPECT_NE(s.footing, nullptr);
            EXPECT_STRNE(s.why, "");
        }
    }
}

TEST(Sort, ADriveOnOnePhaseAsksForFAndOnThreeForB) {
    EXPECT_EQ(sorted(driven(CircuitKind::motor, 1)).type, RcdType::f);
    EXPECT_EQ(sorted(driven(CircuitKind::motor, 3)).type, RcdType::b);
    EXPECT_EQ(sorted(driven(CircuitKind::motor, 1, Answer::no)).type, RcdType::a);
}

TEST(Sort, AMotorOfWhichNobodySaidHowItIsDrivenCountsAsDriven) {
    const Sort s = sorted(driven(CircuitKind::heat_pump, 1, Answer::unknown));
    EXPECT_EQ(s.type, RcdType::f);
    EXPECT_FALSE(s.sure);
    EXPECT_EQ(sorted(driven(CircuitKind::kiln, 1, Answer::unknown)).type, RcdType::a);
}

TEST(Sort, AVehicleAsksForBOrAWithDetectionInThePoint) {
    const Sort s = sorted(circuit(CircuitKind::vehicle_charging));
    EXPECT_EQ(s.type, RcdType::b);
    EXPECT_TRUE(s.detection_instead);
    EXPECT_EQ(s.least_upstream(), RcdType::a);
    EXPECT_EQ(s.footing->clause, "722.531.3.101");
}

Sight seen(std::vector<site::Circuit> circuits, std::optional<RcdType> upstream) {
    const site::Job job = job_with(std::move(circuits));
    return sight_of(view(job), upstream);
}

TEST(Sort, WhatStandsInFrontIsNoLowerThanWhatItFeeds) {
    const auto vehicle = circuit(CircuitKind::vehicle_charging);
    const auto drive = driven(CircuitKind::pump, 1);
    const auto sockets = circuit(CircuitKind::socket_ring);
    EXPECT_EQ(seen({sockets}, RcdType::ac), Sight::blinded);
    EXPECT_EQ(seen({sockets}, RcdType::a), Sight::sees);
    EXPECT_EQ(seen({sockets, drive}, RcdType::a), Sight::blinded);
    EXPECT_EQ(seen({sockets, drive}, RcdType::f), Sight::sees);
    EXPECT_EQ(seen({vehicle}, RcdType::ac), Sight::blinded);
    EXPECT_EQ(seen({vehicle}, RcdType::a), Sight::only_with_detection);
    EXPECT_EQ(seen({vehicle}, RcdType::b), Sight::sees);
    EXPECT_EQ(seen({sockets}, std::nullopt), Sight::not_known);
}

TEST(Sort, AnotherCircuitNeverLetsALowerTypeStandInFront) {
    std::vector<site::Circuit> circuits{circuit(CircuitKind::lighting)};
    RcdType before = RcdType::a;
    for (const CircuitKind kind : {CircuitKind::freezer, CircuitKind::heat_pump,
                                   CircuitKind::socket_ring, CircuitKind::solar}) {
        circuits.push_back(circuit(kind));
        const site::Job job = job_with(circuits);
        EXPECT_GE(upstream_type(view(job)), before);
        EXPECT_LE(upstream_type_with_detection(view(job)), upstream_type(view(job)));
        before = upstream_type(view(job));
    }
    EXPECT_EQ(before, RcdType::b);
}

}  // namespace
}  // namespace toft::guard
