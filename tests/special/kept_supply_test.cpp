#include "special/advising.h"

namespace toft::special {
namespace {

using site::CircuitKind;
using site::KeepsSupply;

site::Job keeping(KeepsSupply keeps, CircuitKind kind = CircuitKind::battery) {
    site::Job job = with_circuit(kind);
    job.buildings[1].circuits[0].keeps_supply = keeps;
    return job;
}

// 551.4.3.2 as remembered: a source switched in for the public supply does not rely on its earth.
TEST(KeptSupply, HasAnElectrodeAndJoinsNeutralAndEarthOnlyWhileTheMainsIsOff) {
    for (const auto kind : {CircuitKind::battery, CircuitKind::solar}) {
        const Advice earth = about(keeping(KeepsSupply::building, kind), "kept supply: earth");
        EXPECT_TRUE(holds(earth.says, "an electrode at the building"));
        EXPECT_TRUE(holds(earth.says, "at most 200 Ω"));
        EXPECT_TRUE(holds(earth.says, "only while the mains is cut off"));
        EXPECT_TRUE(earth.needs_a_person);
    }
}

TEST(KeptSupply, OfTheHouseIsEarthedThereAndTheRunIsThenNotJudged) {
    const site::Job job = keeping(KeepsSupply::house);
    EXPECT_TRUE(holds(about(job, "kept supply: earth").says, "add an electrode at the house"));
    EXPECT_TRUE(holds(about(job, "kept supply: changeover").says, "not judged here"));
    site::Job tt = job;
    tt.intake.earthing = site::Earthing::tt;
    EXPECT_TRUE(holds(about(tt, "kept supply: earth").says, "the house's own electrode"));
}

TEST(KeptSupply, IsChangedOverInFrontOfTheCircuitsItKeeps) {
    const Advice advice = about(keeping(KeepsSupply::building), "kept supply: changeover");
    EXPECT_EQ(advice.footing->clause, "551.6.1");
    EXPECT_TRUE(holds(advice.asks, "the neutral too"));
    EXPECT_TRUE(holds(advice.says, "run and house stay dead"));
}

TEST(KeptSupply, DoesNotOperateBreakers) {
    EXPECT_TRUE(holds(about(keeping(KeepsSupply::building), "kept supply: faults").says,
                      "breakers and fuses may never act"));
}

TEST(KeptSupply, TellsWhatTheCircuitsAskForMoreThanItGives) {
    site::Job job = keeping(KeepsSupply::building);
    const char* what = "kept supply: circuits";
    EXPECT_TRUE(holds(about(job, what).says, "name the circuits it keeps"));
    site::Circuit heater;
    heater.load_w = support::measured(3000.0);
    job.buildings[1].circuits.push_back(heater);
    EXPECT_TRUE(holds(about(job, what).says, "stated at 3000 W, this source at 2000 W"));
    job.buildings[1].circuits[1].load_w = support::measured(1500.0);
    EXPECT_TRUE(holds(about(job, what).says, "name the circuits it keeps"));
}

TEST(KeptSupply, ABatteryOfWhichNothingIsSaidMayDoIt) {
    EXPECT_TRUE(about(with_circuit(CircuitKind::battery), "kept supply").needs_a_person);
    EXPECT_FALSE(advises(with_circuit(CircuitKind::solar), "kept supply"));
    EXPECT_FALSE(advises(keeping(KeepsSupply::nothing), "kept supply"));
    EXPECT_FALSE(advises(keeping(KeepsSupply::nothing), "kept supply: earth"));
}

}  // namespace
}  // namespace toft::special
