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

Finding<Silent> judged(std::vector<site::Leg> legs, double separate_mm2 = 0) {
    const site::Job job = support::job_with_legs(std::move(legs));
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    if (separate_mm2 > 0) {
        s.protective = study::Protective::separate;
        s.separate = &support::conductor(separate_mm2);
    }
    EXPECT_TRUE(support::recorded_alike("suitability", job, s));
    return support::finding_of("suitability", job, s);
}

TEST(Suitability, MethodsWithoutARatingAreRefused) {
    for (LegMethod method : {LegMethod::in_conduit, LegMethod::in_trunking,
                             LegMethod::above_ceiling, LegMethod::overhead}) {
        const auto found = judged({plain_leg(LegMethod::clipped), plain_leg(method)});
        EXPECT_EQ(found.verdict, Verdict::fails) << site::word(method);
        EXPECT_NE(std::string(found.says).find("no rating"), std::string::npos);
    }
    for (LegMethod method :
         {LegMethod::clipped, LegMethod::tray, LegMethod::free_air, LegMethod::in_insulation,
          LegMethod::buried_direct, LegMethod::buried_in_duct}) {
        EXPECT_EQ(judged({plain_leg(method)}).verdict, Verdict::meets) << site::word(method);
    }
}

TEST(Suitability, ASeparateConductorBareInTheGroundIsSixteen) {
    const std::vector<site::Leg> buried{plain_leg(LegMethod::clipped),
                                        plain_leg(LegMethod::buried_direct)};
    EXPECT_EQ(judged(buried, 10).verdict, Verdict::fails);
    EXPECT_EQ(judged(buried, 16).verdict, Verdict::meets);  // a tie
    EXPECT_DOUBLE_EQ(judged(buried, 16).limit, 16);
}

TEST(Suitability, InADuctAllTheWayTwoAndAHalfAndElsewhereFour) {
    const std::vector<site::Leg> duct{plain_leg(LegMethod::buried_in_duct),
                                      plain_leg(LegMethod::buried_in_duct)};
    EXPECT_DOUBLE_EQ(judged(duct, 4).limit, 2.5);
    EXPECT_EQ(judged(duct, 2.5).verdict, Verdict::meets);
    EXPECT_EQ(judged(duct, 1.5).verdict, Verdict::fails);
    const std::vector<site::Leg> mixed{plain_leg(LegMethod::buried_in_duct),
                                       plain_leg(LegMethod::clipped)};
    EXPECT_DOUBLE_EQ(judged(mixed, 4).limit, 4);
    EXPECT_EQ(judged(mixed, 4).verdict, Verdict::meets);
    EXPECT_EQ(judged(mixed, 2.5).verdict, Verdict::fails);
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
        EXPECT_EQ(judged({under(row.surface, row.depth)}).verdict, Verdict::meets)
            << site::word(row.surface);
        const auto found = judged({under(row.surface, row.depth - 0.01)});
        EXPECT_EQ(found.verdict, Verdict::caution) << site::word(row.surface);
        EXPECT_NE(std::string(found.says).find("shallower"), std::string::npos);
    }
}

TEST(Suitability, AnUnknownDepthIsTakenAsShallow) {
    site::Leg leg = under(Surface::lawn, 1);
    leg.depth = {};
    EXPECT_EQ(judged({leg}).verdict, Verdict::caution);
    leg.surface.reset();  // nothing to hold it against
    EXPECT_EQ(judged({leg}).verdict, Verdict::meets);
}

TEST(Suitability, DepthIsJudgedOnlyInTheGroundAndNeverLiftsAFailure) {
    site::Leg leg = plain_leg(LegMethod::clipped);
    leg.surface = Surface::road;
    leg.depth = measured(metres(0.1));
    EXPECT_EQ(judged({leg}).verdict, Verdict::meets);
    EXPECT_EQ(judged({under(Surface::lawn, 0.3)}, 10).verdict, Verdict::fails);
    EXPECT_EQ(judged({plain_leg(LegMethod::overhead), under(Surface::lawn, 0.3)}).verdict,
              Verdict::fails);
}

}  // namespace
}  // namespace toft::rules
