#include "study/setting_parts.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using support::between;
using support::job_with_legs;
using support::measured;
using support::plain_leg;
using support::prepared;

bool is_open(const Setting<Silent>& setting, const std::string& pointer) {
    return std::any_of(setting.open.begin(), setting.open.end(),
                       [&](const OpenFact& fact) { return fact.pointer == pointer; });
}

TEST(Legs, EveryWayOfLayingTakesItsOwnColumnOfTheRatingTable) {
    using cable::Laying;
    using site::LegMethod;
    const std::pair<LegMethod, Laying> pairs[] = {
        {LegMethod::clipped, Laying::clipped},
        {LegMethod::tray, Laying::tray},
        {LegMethod::free_air, Laying::free_air},
        {LegMethod::in_insulation, Laying::insulated},
        {LegMethod::buried_direct, Laying::direct},
        {LegMethod::buried_in_duct, Laying::duct},
        {LegMethod::in_conduit, Laying::conduit},
        {LegMethod::in_trunking, Laying::trunking},
        {LegMethod::above_ceiling, Laying::above_ceiling},
        {LegMethod::overhead, Laying::overhead},
    };
    for (const auto& [method, laying] : pairs) {
        const site::Job job = job_with_legs({plain_leg(method)});
        EXPECT_EQ(prepared(job).legs[0].laying, laying) << site::word(method);
    }
}

TEST(Legs, LengthsAddUpToTheRun) {
    const site::Job job = job_with_legs({plain_leg(site::LegMethod::clipped, 4),
                                         plain_leg(site::LegMethod::buried_direct, 26),
                                         plain_leg(site::LegMethod::tray, 2.5)});
    EXPECT_EQ(prepared(job).length_most, metres(32.5));
    EXPECT_EQ(prepared(job).length_least, metres(32.5));
}

TEST(Legs, ALengthThatIsOnlyGuessedIsTakenLongForDropAndShortForFaultLevel) {
    site::Leg leg = plain_leg(site::LegMethod::buried_direct);
    leg.length = between(metres(25), metres(35));
    const site::Job job = job_with_legs({leg});
    const auto setting = prepared(job);
    EXPECT_EQ(setting.length_most, metres(35));
    EXPECT_EQ(setting.length_least, metres(25));
    EXPECT_TRUE(is_open(setting, "/runs/0/legs/0/length_m"));
}

TEST(Legs, GroundThatNobodyMeasuredIsTakenHotAndDry) {
    site::Job job = support::plain_job();
    job.ground.temperature = {};
    job.ground.thermal_resistivity = {};
    const auto unknown = prepared(job);
    EXPECT_TRUE(is_open(unknown, "/ground/temperature_c"));
    EXPECT_TRUE(is_open(unknown, "/ground/thermal_resistivity_k_m_per_w"));
    job.ground.temperature = measured(celsius(20));
    job.ground.thermal_resistivity = measured(2.5);
    const auto worst = prepared(job);
    EXPECT_EQ(unknown.legs[0].factors[0].total, worst.legs[0].factors[0].total);
    EXPECT_EQ(unknown.legs[0].surroundings, celsius(20));
}

TEST(Legs, TwoBuriedLegsAskForTheGroundOnce) {
    site::Job job = job_with_legs(
        {plain_leg(site::LegMethod::buried_direct), plain_leg(site::LegMethod::buried_in_duct)});
    job.ground.temperature = {};
    const auto setting = prepared(job);
    EXPECT_EQ(std::count_if(setting.open.begin(), setting.open.end(),
                            [](const OpenFact& f) { return f.pointer == "/ground/temperature_c"; }),
              1);
}

TEST(Legs, ALegInAirDoesNotAskForTheGround) {
    site::Job job = job_with_legs({plain_leg(site::LegMethod::clipped)});
    job.ground = {};
    for (const OpenFact& fact : prepared(job).open) {
        EXPECT_EQ(fact.pointer.find("/ground/temperature"), std::string::npos);
        EXPECT_EQ(fact.pointer.find("/ground/thermal"), std::string::npos);
    }
}

TEST(Legs, TheCableItselfCountsInTheGroup) {
    site::Leg leg = plain_leg(site::LegMethod::clipped);
    const site::Job alone = job_with_legs({leg});
    leg.other_loaded_circuits = measured(1.0);
    const site::Job paired = job_with_legs({leg});
    EXPECT_EQ(prepared(alone).legs[0].factors[0].cg, 1.0);
    EXPECT_LT(prepared(paired).legs[0].factors[0].cg, 1.0);
}

TEST(Legs, InsulationOfUnstatedLengthCoversTheWholeLeg) {
    site::Leg leg = plain_leg(site::LegMethod::in_insulation, 3);
    const site::Job whole = job_with_legs({leg});
    EXPECT_EQ(prepared(whole).legs[0].factors[0].ci, 0.5);
    leg.insulation_length = measured(millimetres(100));
    const site::Job brief = job_with_legs({leg});
    EXPECT_EQ(prepared(brief).legs[0].factors[0].ci, 0.78);
}

TEST(Legs, ASurfaceBringsItsAdviceOnDepth) {
    site::Leg leg = plain_leg(site::LegMethod::buried_direct);
    leg.surface.reset();
    const site::Job bare = job_with_legs({leg});
    EXPECT_EQ(prepared(bare).legs[0].advice, nullptr);
    leg.surface = site::Surface::bed;
    const site::Job bed = job_with_legs({leg});
    ASSERT_NE(prepared(bed).legs[0].advice, nullptr);
    EXPECT_EQ(prepared(bed).legs[0].advice->surface, "bed");
}

}  // namespace
}  // namespace toft::study
