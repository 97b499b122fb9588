#include "guard/dark_parts.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::CircuitKind;

/// A case whose faults are as large as asked for.
struct Sized {
    site::Job job = job_with({circuit(CircuitKind::socket_radial, "sockets")});
    study::RunScheme scheme = on_tails();
    View v;
    Chain chain;

    Certainty head(Trouble trouble, Amperes fault) {
        v = view(job);
        chain = chain_of(v, scheme, amperes(0));
        const DarkCase c{v, scheme, chain, {fault, fault, fault, fault}, amperes(2), {}};
        return opening(c, trouble, 0, {Station::head, 0, ""});
    }
};

// A 32 A gG fuse holds 200 A for 0.1 s (IEC 60269-1 Table 3, as remembered); the circuit's RCBO has
// cleared an earth fault of that size within 40 ms.
TEST(Opening, TheFuseOutlastsASmallSolidEarthFaultAndNotALargeOne) {
    Sized one;
    EXPECT_EQ(one.head(Trouble::solid_earth, amperes(150)), Certainty::no);
    EXPECT_EQ(one.head(Trouble::solid_earth, amperes(200)), Certainty::no);
    EXPECT_EQ(one.head(Trouble::solid_earth, amperes(900)), Certainty::possibly);
}

TEST(Opening, AShortIsHeldOutOnlyAgainstABreakerThatIsKnown) {
    Sized one;
    EXPECT_EQ(one.head(Trouble::short_circuit, amperes(150)), Certainty::possibly);
    one.job.buildings[1].circuits[0].device = site::NamedDevice{"BS EN 61009", "B", amperes(6)};
    EXPECT_EQ(one.head(Trouble::short_circuit, amperes(150)), Certainty::no);
    EXPECT_EQ(one.head(Trouble::short_circuit, amperes(900)), Certainty::possibly);
}

// What nobody stated but the design chose is known.
TEST(Opening, TheBreakerOfTheDesignIsKnownToo) {
    site::Circuit heater = circuit(CircuitKind::fixed_load, "heater");
    heater.load_w = measured(1000.0);
    Darkness d = darkness(job_with({heater}), on_tails());
    EXPECT_EQ(opens(d, "overload of heater", Station::head), Certainty::possibly);
    heater.length = measured(metres(9));
    site::Job job = job_with({heater});
    job.buildings[1].load = measured(amperes(5));
    d = darkness(job, on_tails());
    EXPECT_EQ(opens(d, "overload of heater", Station::head), Certainty::no);
}

TEST(Opening, ALargerFaultNeverOpensLessSurely) {
    Sized one;
    one.job.buildings[1].circuits[0].device = site::NamedDevice{"BS EN 61009", "B", amperes(6)};
    for (const Trouble t : {Trouble::solid_earth, Trouble::short_circuit}) {
        Certainty before = Certainty::no;
        for (const double fault : {20.0, 100.0, 300.0, 1000.0, 5000.0}) {
            const Certainty now = one.head(t, amperes(fault));
            EXPECT_GE(now, before);
            before = now;
        }
    }
}

TEST(Opening, OnTtNoFuseIsSureToSeeAnEarthFaultOnTheRun) {
    Sized one;
    EXPECT_EQ(one.head(Trouble::run_earth, amperes(900)), Certainty::surely);
    one.job.intake.earthing = site::Earthing::tt;
    EXPECT_EQ(one.head(Trouble::run_earth, amperes(900)), Certainty::possibly);
}

TEST(Opening, AnRcboAtTheHeadSeesEarthFaultsAndNoShortsByItsResidualPart) {
    Sized one;
    one.scheme = by_rcbo();
    EXPECT_EQ(one.head(Trouble::weak_earth, amperes(900)), Certainty::possibly);
    EXPECT_EQ(one.head(Trouble::run_weak, amperes(900)), Certainty::surely);
    EXPECT_EQ(one.head(Trouble::run_earth, amperes(900)), Certainty::surely);
    EXPECT_EQ(one.head(Trouble::house_weak, amperes(900)), Certainty::no);
}

}  // namespace
}  // namespace toft::guard
