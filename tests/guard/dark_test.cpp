#include "guard/dark.h"

#include "guard/guarding.h"

#include <rapidcheck/gtest.h>

namespace toft::guard {
namespace {

using site::Answer;
using site::CircuitKind;

constexpr Certainty no = Certainty::no;
constexpr Certainty possibly = Certainty::possibly;
constexpr Certainty surely = Certainty::surely;

site::Circuit rated(CircuitKind kind, const char* name, double rating) {
    site::Circuit c = circuit(kind, name);
    c.device = site::NamedDevice{"BS EN 61009", "B", amperes(rating)};
    return c;
}

/// Sockets and a freezer.
site::Job two_circuits() {
    site::Job job = job_with({rated(CircuitKind::socket_radial, "sockets", 16),
                              rated(CircuitKind::freezer, "freezer", 6)});
    job.intake.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(100)};
    job.intake.demand = measured(amperes(30));
    job.buildings[1].load = measured(amperes(5));
    return job;
}

site::Job behind_house_rcd(double ma, Answer delayed) {
    site::Job job = two_circuits();
    job.intake.board.behind_rcd = measured(milliamperes(ma));
    job.intake.board.rcd_delayed = delayed;
    return job;
}

TEST(Dark, ADelayedRcdAtTheHeadLeavesAnEarthFaultToItsCircuit) {
    const Darkness d = darkness(two_circuits(), behind_delayed(on_tails()));
    EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::head_rcd), no);
    EXPECT_EQ(dark(d, "weak earth fault on sockets", "sockets"), surely);
}

// "Which of two 30 mA devices in a row trips?" Either, or both (536.4.1.4).
TEST(Dark, TwoThirtiesInARowMayTakeTheFreezerAndTheHouse) {
    const Darkness d = darkness(behind_house_rcd(30, Answer::no), in_the_board(), milliamperes(30));
    EXPECT_EQ(dark(d, "weak earth fault on sockets", "freezer"), possibly);
    EXPECT_EQ(dark(d, "weak earth fault on sockets", "house: circuits behind the same RCD"),
              possibly);
    EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::house_rcd), possibly);
    EXPECT_EQ(lost_with_others(d).size(), 2u);
}

TEST(Dark, AnEarthFaultInTheHouseTakesTheBuildingBehindTheSameRcd) {
    const Darkness d = darkness(behind_house_rcd(30, Answer::no), in_the_board(), milliamperes(30));
    EXPECT_EQ(dark(d, "weak earth fault in the house", "freezer"), surely);
    EXPECT_EQ(opens(d, "weak earth fault in the house", Station::head), no);
}

TEST(Dark, AnRcdThatNobodyLookedForIsThereOnlyPossibly) {
    site::Job job = behind_house_rcd(30, Answer::no);
    job.intake.board.behind_rcd = {};
    const Darkness d = darkness(job, in_the_board(), milliamperes(30));
    EXPECT_EQ(dark(d, "weak earth fault in the house", "freezer"), possibly);
    EXPECT_EQ(opens(d, "solid earth fault on the run", Station::house_rcd), possibly);
    EXPECT_EQ(dark(d, "solid earth fault on the run", "freezer"), surely);
}

TEST(Dark, ADelayedHundredOfTheHouseLosesTheHouseOnlyByTheRun) {
    const Darkness d =
        darkness(behind_house_rcd(100, Answer::yes), in_the_board(), milliamperes(100));
    EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::house_rcd), no);
    EXPECT_EQ(opens(d, "solid earth fault on the run", Station::house_rcd), possibly);
}

TEST(Dark, AWeakEarthFaultOnTheRunIsSeenByAnRcdInFrontOrByNobody) {
    const Darkness bare = darkness(two_circuits(), on_tails());
    EXPECT_EQ(dark(bare, "weak earth fault on the run", "freezer"), no);
    const Darkness guarded = darkness(two_circuits(), behind_delayed(on_tails()));
    EXPECT_EQ(dark(guarded, "weak earth fault on the run", "freezer"), surely);
    EXPECT_EQ(dark(guarded, "weak earth fault on the run", "house"), no);
    const Darkness house =
        darkness(behind_house_rcd(30, Answer::no), in_the_board(), milliamperes(30));
    EXPECT_EQ(dark(house, "weak earth fault on the run", "house: circuits behind the same RCD"),
              surely);
    EXPECT_EQ(dark(house, "weak earth fault on the run", "house: the rest"), no);
}

TEST(Dark, NoFuseOpensByAWeakEarthFault) {
    for (const auto& scheme : {on_tails(), in_the_board(), behind_delayed(on_tails())}) {
        const Darkness d = darkness(two_circuits(), scheme);
        EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::service), no);
        EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::head), no);
        EXPECT_EQ(dark(d, "weak earth fault on sockets", "freezer"), no);
    }
}

TEST(Dark, WithoutAnRcdInFrontOnlyFusesClearASolidFaultOnTheRun) {
    const Darkness bare = darkness(two_circuits(), on_tails());
    EXPECT_NE(opens(bare, "solid earth fault on the run", Station::head), no);
    EXPECT_NE(opens(bare, "short circuit on the run", Station::head), no);
    const Darkness guarded = darkness(two_circuits(), behind_delayed(on_tails()));
    EXPECT_NE(opens(guarded, "solid earth fault on the run", Station::head_rcd), no);
    EXPECT_EQ(opens(guarded, "weak earth fault on the run", Station::head_rcd), surely);
    EXPECT_EQ(opens(guarded, "short circuit on the run", Station::head_rcd), no);
}

TEST(Dark, WhereAnotherMayBeFirstNoDeviceIsSureToOpen) {
    const Darkness d = darkness(behind_house_rcd(30, Answer::no), in_the_board(), milliamperes(30));
    EXPECT_EQ(opens(d, "weak earth fault on sockets", Station::circuit), possibly);
    EXPECT_EQ(dark(d, "weak earth fault on sockets", "sockets"), surely);
    const Darkness apart = darkness(two_circuits(), behind_delayed(on_tails()));
    EXPECT_EQ(opens(apart, "weak earth fault on sockets", Station::circuit), surely);
}

TEST(Dark, AnOverloadStaysWithItsCircuitWhereTheFuseCarriesAll) {
    site::Job job = two_circuits();
    EXPECT_EQ(opens(darkness(job, on_tails()), "overload of freezer", Station::head), no);
    job.buildings[1].circuits[0].device->rating = amperes(32);
    EXPECT_EQ(opens(darkness(job, on_tails()), "overload of sockets", Station::head), possibly);
    job.buildings[1].circuits[0].device.reset();
    EXPECT_EQ(opens(darkness(job, on_tails()), "overload of sockets", Station::head), possibly);
}

TEST(Dark, AServiceFuseThatNobodyReadMayOpen) {
    site::Job job = two_circuits();
    job.intake.service_fuse.reset();
    const Darkness d = darkness(job, on_tails());
    EXPECT_EQ(dark(d, "short circuit on the run", "house"), possibly);
    EXPECT_EQ(dark(d, "solid earth fault on the run", "house"), possibly);
}

TEST(Dark, ALossOfTheSupplyTakesAllAndOpensNothing) {
    const Darkness d = darkness(two_circuits(), on_tails());
    const Event& loss = d.events.back();
    EXPECT_EQ(loss.trouble, Trouble::loss);
    for (const Certainty c : loss.dark) EXPECT_EQ(c, surely);
    for (const Certainty c : loss.opens) EXPECT_EQ(c, no);
}

TEST(Dark, EveryFaultTakesItsOwnCircuitAndEveryFaultOfTheRunTheBuilding) {
    for (const auto& scheme : {on_tails(), in_the_board(), by_rcbo(), behind_delayed(on_tails())}) {
        const Darkness d =
            darkness(behind_house_rcd(30, Answer::unknown), scheme, milliamperes(30));
        for (const Event& e : d.events) {
            for (std::size_t p = 0; p < d.parts.size(); ++p) {
                const bool own =
                    e.trouble <= Trouble::short_circuit && e.circuit == d.parts[p].circuit;
                const bool run = e.trouble == Trouble::run_earth || e.trouble == Trouble::run_short;
                if (d.parts[p].house || !(own || run)) continue;
                EXPECT_EQ(e.dark[p], surely) << e.name;
            }
        }
    }
}

site::Circuit drawn_circuit(int i) {
    const std::string name = "c" + std::to_string(i);
    const auto kind = static_cast<CircuitKind>(*rc::gen::inRange(0, 15));
    site::Circuit c = circuit(kind, name.c_str());
    if (*rc::gen::arbitrary<bool>()) {
        c.device = site::NamedDevice{"BS EN 61009", "B", amperes(*rc::gen::element(6, 16, 32))};
    }
    return c;
}

study::RunScheme drawn_scheme() {
    return *rc::gen::element(on_tails(), in_the_board(), by_rcbo(), behind_delayed(on_tails()),
                             behind_delayed(in_the_board()));
}

RC_GTEST_PROP(DarkLaws, AnotherCircuitNeverMakesLessGoDark, ()) {
    const int count = *rc::gen::inRange(1, 5);
    std::vector<site::Circuit> circuits;
    for (int i = 0; i < count; ++i) circuits.push_back(drawn_circuit(i));
    site::Job job = two_circuits();
    job.buildings[1].circuits = circuits;
    const study::RunScheme scheme = drawn_scheme();
    const Amperes behind = milliamperes(*rc::gen::element(0, 30, 100));
    const Darkness before = darkness(job, scheme, behind);
    job.buildings[1].circuits.push_back(drawn_circuit(count));
    const Darkness after = darkness(job, scheme, behind);
    for (const Event& e : before.events) {
        for (std::size_t p = 0; p < before.parts.size(); ++p) {
            RC_ASSERT(e.dark[p] <= dark(after, e.name, before.parts[p].name));
        }
    }
}

RC_GTEST_PROP(DarkLaws, NothingIsDarkThatNoOpenDeviceFeeds, ()) {
    site::Job job = two_circuits();
    const Darkness d = darkness(job, drawn_scheme(), milliamperes(*rc::gen::element(0, 30)));
    for (const Event& e : d.events) {
        if (e.trouble == Trouble::loss) continue;
        Certainty most = no;
        for (const Certainty c : e.opens) most = std::max(most, c);
        for (const Certainty c : e.dark) RC_ASSERT(c == no || most != no);
    }
}

}  // namespace
}  // namespace toft::guard
