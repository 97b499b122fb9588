#include "existing/existing_cable.h"

#include "support/catalogue.h"
#include "support/existing.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::Laid;
using support::measured;

site::Job cable_lies_there() {
    return support::with_cable_there(support::plain_job(), support::cable(2, 10));
}

study::RunScheme keeping_scheme(Laid laid = Laid::kept) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.first().laid = laid;
    s.first().parallel = laid == Laid::doubled ? 2 : 1;
    return s;
}

Finding<Silent> cable_judged(const site::Job& job, Laid laid = Laid::kept) {
    EXPECT_TRUE(support::recorded_alike("existing-cable", job, keeping_scheme(laid)));
    return support::finding_of("existing-cable", job, keeping_scheme(laid));
}

TEST(ExistingCable, SaysNothingOfANewOne) {
    const auto found = cable_judged(cable_lies_there(), Laid::anew);
    EXPECT_EQ(found.verdict, Verdict::meets);
    EXPECT_FALSE(found.concerns);
}

TEST(ExistingCable, ASoundOneStaysWithACaution) {
    for (const Laid laid : {Laid::kept, Laid::doubled}) {
        const auto found = cable_judged(cable_lies_there(), laid);
        EXPECT_EQ(found.verdict, Verdict::caution);
        EXPECT_NE(std::string(found.says).find("test it again"), std::string::npos);
        EXPECT_NEAR(found.value, 200, 1e-9);
    }
}

TEST(ExistingCable, OneMegohmIsTheLeast) {
    for (const auto& [megohm, verdict] : {std::pair{0.0, Verdict::fails},
                                          {0.99, Verdict::fails},
                                          {1.0, Verdict::caution},
                                          {500.0, Verdict::caution}}) {
        site::Job job = cable_lies_there();
        job.runs[0].existing->insulation = measured(ohms(megohm * 1e6));
        const auto found = cable_judged(job);
        EXPECT_EQ(found.verdict, verdict) << megohm;
        EXPECT_NEAR(found.limit, 1, 1e-9);
        EXPECT_TRUE(found.at_least);
    }
}

TEST(ExistingCable, DamagedOrUnseenOrUnreadFailsAtTheWorseEnd) {
    site::Job job = cable_lies_there();
    job.runs[0].existing->condition = site::Condition::damaged;
    EXPECT_EQ(cable_judged(job).verdict, Verdict::fails);
    job.runs[0].existing->condition.reset();
    EXPECT_EQ(cable_judged(job).verdict, Verdict::fails);
    job.runs[0].existing->condition = site::Condition::sound;
    job.runs[0].existing->insulation = {};
    EXPECT_EQ(cable_judged(job).verdict, Verdict::fails);
}

TEST(ExistingCable, BelowTwoMegohmsAFaultMayBeOnItsWay) {
    site::Job job = cable_lies_there();
    job.runs[0].existing->insulation = measured(ohms(1.9e6));
    EXPECT_NE(std::string(cable_judged(job).says).find("on its way"), std::string::npos);
    job.runs[0].existing->insulation = measured(ohms(2e6));
    EXPECT_EQ(std::string(cable_judged(job).says).find("on its way"), std::string::npos);
}

TEST(ExistingCable, OldColoursAreToldAtBothEnds) {
    site::Job job = cable_lies_there();
    job.runs[0].existing->colours = "red and black";
    EXPECT_NE(std::string(cable_judged(job).says).find("red and black"), std::string::npos);
}

}  // namespace
}  // namespace toft::rules
