#include "rules/suitability.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::LegMethod;
using site::Surface;
using support::measured;
using support::plain_leg;

Finding<Silent> suitability_judged(std::vector<site::Leg> legs, double separate_mm2 = 0) {
    const site::Job job = support::job_with_legs(std::move(legs));
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    if (separate_mm2 > 0) {
        s.first().protective = study::Protective::separate;
        s.first().separate = &support::conductor(separate_mm2);
    }
    EXPECT_TRUE(support::recorded_alike("suitability", job, s));
    return support::finding_of("suitability", job, s);
}

TEST(Suitability, ArmouredCableIsNotRatedInConduitTrunkingOrAboveACeiling) {
    for (LegMethod method :
         {LegMethod::in_conduit, LegMethod::in_trunking, LegMethod::above_ceiling}) {
        const auto found = suitability_judged({plain_leg(LegMethod::clipped), plain_leg(method)});
        EXPECT_EQ(found.verdict, Verdict::fails) << site::word(method);
        EXPECT_NE(std::string(found.says).find("no rating"), std::string::npos);
    }
    for (LegMethod method :
         {LegMethod::clipped, LegMethod::tray, LegMethod::free_air, LegMethod::in_insulation,
          LegMethod::buried_direct, LegMethod::buried_in_duct}) {
        EXPECT_EQ(suitability_judged({plain_leg(method)}).verdict, Verdict::meets)
            << site::word(method);
    }
}

site::Leg lying(LegMethod method, site::Answer indoors) {
    site::Leg leg = plain_leg(method);
    leg.indoors = indoors;
    return leg;
}

Finding<Silent> judged_flat(const site::Leg& leg) {
    const site::Job job = support::job_with_legs({leg});
    const auto s = support::scheme(support::cable(tables::Family::flat_twin_and_earth, 2, 6),
                                   study::Protective::core, support::breaker("B", 32));
    EXPECT_TRUE(support::recorded_alike("suitability", job, s));
    return support::finding_of("suitability", job, s);
}

TEST(Suitability, CableWithoutArmourNeverLiesInTheGround) {
    for (LegMethod method : {LegMethod::buried_direct, LegMethod::buried_in_duct}) {
        const auto found = judged_flat(lying(method, site::Answer::yes));
        EXPECT_EQ(found.verdict, Verdict::fails) << site::word(method);
        EXPECT_NE(std::string(found.says).find("earthed covering"), std::string::npos);
    }
}

TEST(Suitability, CableWithoutArmourBelongsIndoorsOrInConduit) {
    for (LegMethod method : {LegMethod::clipped, LegMethod::tray, LegMethod::in_insulation}) {
        EXPECT_EQ(judged_flat(lying(method, site::Answer::yes)).verdict, Verdict::meets);
        const auto outside = judged_flat(lying(method, site::Answer::no));
        EXPECT_EQ(outside.verdict, Verdict::fails) << site::word(method);
        EXPECT_NE(std::string(outside.says).find("sun and wet"), std::string::npos);
        // Nobody said: it may lie in the open.
        EXPECT_EQ(judged_flat(lying(method, site::Answer::unknown)).verdict, Verdict::fails);
    }
    for (LegMethod method : {LegMethod::in_conduit, LegMethod::in_trunking}) {
        EXPECT_EQ(judged_flat(lying(method, site::Answer::no)).verdict, Verdict::meets)
            << site::word(method);
    }
}

TEST(Suitability, TwinAndEarthIsNotHungBetweenBuildings) {
    EXPECT_EQ(judged_flat(lying(LegMethod::overhead, site::Answer::yes)).verdict, Verdict::fails);
}

TEST(Suitability, TwinAndEarthIndoorsThenArmouredInTheGround) {
    const auto& flat = support::cable(tables::Family::flat_twin_and_earth, 2, 6);
    const auto& armoured = support::cable(3, 6);
    site::Leg inside = lying(LegMethod::clipped, site::Answer::yes);
    site::Leg outside = plain_leg(LegMethod::buried_direct);
    support::name_cable(inside, flat);
    support::name_cable(outside, armoured);
    site::Job job = support::job_with_legs({inside, outside});
    const auto s = support::scheme({support::stretch(flat, study::Protective::core),
                                    support::stretch(armoured, study::Protective::core)},
                                   support::breaker("B", 32));
    EXPECT_EQ(support::finding_of("suitability", job, s).verdict, Verdict::meets);
    std::swap(job.runs[0].legs[0].method, job.runs[0].legs[1].method);
    EXPECT_EQ(support::finding_of("suitability", job, s).verdict, Verdict::fails);
}

site::Leg hung(Surface surface, double height_m) {
    site::Leg leg = plain_leg(LegMethod::overhead);
    leg.surface = surface;
    leg.height = measured(metres(height_m));
    return leg;
}

TEST(Suitability, OverheadCableHangsAsHighAsWhatItCrossesAsksFor) {
    const std::pair<Surface, double> rows[] = {{Surface::lawn, 3.5},        {Surface::bed, 3.5},
                                               {Surface::path, 3.5},        {Surface::patio, 3.5},
                                               {Surface::shared_path, 5.2}, {Surface::drive, 5.8},
                                               {Surface::field, 6},         {Surface::road, 5.8}};
    for (const auto& [surface, height] : rows) {
        EXPECT_EQ(suitability_judged({hung(surface, height)}).verdict, Verdict::meets)
            << site::word(surface);
        const auto low = suitability_judged({hung(surface, height - 0.01)});
        EXPECT_EQ(low.verdict, Verdict::caution) << site::word(surface);
        EXPECT_NE(std::string(low.says).find("hangs lower"), std::string::npos);
    }
}

TEST(Suitability, AHeightOrASurfaceThatNobodyKnowsIsTakenAsTooLow) {
    site::Leg leg = hung(Surface::lawn, 5);
    leg.height = {};  // 3 m at the least
    EXPECT_EQ(suitability_judged({leg}).verdict, Verdict::caution);
    leg = hung(Surface::lawn, 9);
    leg.surface.reset();
    EXPECT_EQ(suitability_judged({leg}).verdict, Verdict::caution);
    leg = hung(Surface::lawn, 9);
    leg.height = support::between(metres(3), metres(9));
    EXPECT_EQ(suitability_judged({leg}).verdict, Verdict::caution);
}

TEST(Suitability, ASeparateConductorBareInTheGroundIsSixteen) {
    const std::vector<site::Leg> buried{plain_leg(LegMethod::clipped),
                                        plain_leg(LegMethod::buried_direct)};
    EXPECT_EQ(suitability_judged(buried, 10).verdict, Verdict::fails);
    EXPECT_EQ(suitability_judged(buried, 16).verdict, Verdict::meets);  // a tie
    EXPECT_DOUBLE_EQ(suitability_judged(buried, 16).limit, 16);
}

TEST(Suitability, InADuctAllTheWayTwoAndAHalfAndElsewhereFour) {
    const std::vector<site::Leg> duct{plain_leg(LegMethod::buried_in_duct),
                                      plain_leg(LegMethod::buried_in_duct)};
    EXPECT_DOUBLE_EQ(suitability_judged(duct, 4).limit, 2.5);
    EXPECT_EQ(suitability_judged(duct, 2.5).verdict, Verdict::meets);
    EXPECT_EQ(suitability_judged(duct, 1.5).verdict, Verdict::fails);
    const std::vector<site::Leg> mixed{plain_leg(LegMethod::buried_in_duct),
                                       plain_leg(LegMethod::clipped)};
    EXPECT_DOUBLE_EQ(suitability_judged(mixed, 4).limit, 4);
    EXPECT_EQ(suitability_judged(mixed, 4).verdict, Verdict::meets);
    EXPECT_EQ(suitability_judged(mixed, 2.5).verdict, Verdict::fails);
}

site::Leg under(Surface surface, double depth_m) {
    site::Leg leg = plain_leg(LegMethod::buried_direct);
    leg.surface = surface;
    leg.depth = measured(metres(depth_m));
    return leg;
}

TEST(Suitability, ShallowerThanAdvisedIsACaution) {
    struct Row {
        Surface surface;
        double depth;
    };
    for (const Row& row :
         {Row{Surface::lawn, 0.5}, Row{Surface::bed, 0.6}, Row{Surface::path, 0.5},
          Row{Surface::drive, 0.6}, Row{Surface::patio, 0.5}, Row{Surface::field, 1.0},
          Row{Surface::shared_path, 0.6}, Row{Surface::road, 0.75}}) {
        EXPECT_EQ(suitability_judged({under(row.surface, row.depth)}).verdict, Verdict::meets)
            << site::word(row.surface);
        const auto found = suitability_judged({under(row.surface, row.depth - 0.01)});
        EXPECT_EQ(found.verdict, Verdict::caution) << site::word(row.surface);
        EXPECT_NE(std::string(found.says).find("shallower"), std::string::npos);
    }
}

TEST(Suitability, ADepthThatNobodyStatedIsNotKnownWhateverLiesOverIt) {
    site::Leg leg = under(Surface::lawn, 1);
    leg.depth = {};
    const auto found = suitability_judged({leg});
    EXPECT_EQ(found.verdict, Verdict::not_known);
    EXPECT_NE(std::string(found.says).find("how deep"), std::string::npos);
    leg.surface.reset();
    EXPECT_EQ(suitability_judged({leg}).verdict, Verdict::not_known);
    EXPECT_EQ(suitability_judged({under(Surface::lawn, 1), leg}).verdict, Verdict::not_known);
}

TEST(Suitability, DepthIsJudgedOnlyInTheGroundAndNeverLiftsAFailure) {
    site::Leg leg = plain_leg(LegMethod::clipped);
    leg.surface = Surface::road;
    leg.depth = measured(metres(0.1));
    EXPECT_EQ(suitability_judged({leg}).verdict, Verdict::meets);
    EXPECT_EQ(suitability_judged({under(Surface::lawn, 0.3)}, 10).verdict, Verdict::fails);
    EXPECT_EQ(
        suitability_judged({plain_leg(LegMethod::in_conduit), under(Surface::lawn, 0.3)}).verdict,
        Verdict::fails);
}

}  // namespace
}  // namespace toft::rules
