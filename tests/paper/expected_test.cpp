// What will be measured, as figures.

#include "paper/expected.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace toft::paper {
namespace {

std::map<std::string, Expectations> expected(const std::string& name) {
    const Made& of_job = made(name);
    const Subject& subject = of_job.subject();
    std::map<std::string, Expectations> all;
    for (const tables::TestStep& step : subject.catalogue.tests) {
        all[step.key] = expected_of(subject, step);
    }
    return all;
}

TEST(Expected, FiguresAreThoseOfTheAnswer) {
    const answer::SchemeAnswer& s = made("demo").answer.schemes.front();
    const auto all = expected("demo");
    const Expected& continuity = all.at("continuity").front();
    EXPECT_EQ(continuity.unit, "Ω");
    EXPECT_EQ(continuity.value, s.run.figures.r1_plus_r2_20c_ohm);
    ASSERT_TRUE(continuity.bound);
    EXPECT_GT(*continuity.bound, *continuity.value);
    const Expected& loop = all.at("zs").front();
    EXPECT_EQ(loop.value, s.run.figures.loop_impedance_far_ohm);
    EXPECT_EQ(loop.bound, s.run.figures.loop_impedance_test_limit_ohm);
    const Expected& near = all.at("fault-current").front();
    EXPECT_EQ(near.value, s.run.figures.fault_current_near_ka);
    EXPECT_EQ(near.bound, s.run.device.breaking_capacity_ka);
    EXPECT_EQ(near.unit, "kA");
}

TEST(Expected, InsulationIsHeldFromAboveToAtLeastAMegohm) {
    // BS 7671:2018, Table 64: 1 MΩ at 500 V d.c. for circuits up to 500 V.
    const auto all = expected("demo");
    for (const Expected& one : all.at("insulation")) {
        EXPECT_TRUE(one.at_least);
        EXPECT_EQ(one.unit, "MΩ");
        EXPECT_EQ(one.bound, 1.0);
    }
}

TEST(Expected, AnElectrodeIsReadWhereThereIsOne) {
    EXPECT_TRUE(expected("demo").at("electrode").empty());
    const auto electrode = expected("own-rod-greenhouse").at("electrode");
    ASSERT_FALSE(electrode.empty());
    EXPECT_EQ(electrode.front().unit, "Ω");
    EXPECT_TRUE(electrode.front().bound);
}

TEST(Expected, FiguresOfReadingsAreFiniteAndHaveAUnit) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed", "three-phase-barn"}) {
        for (const auto& [key, all] : expected(name)) {
            for (const Expected& one : all) {
                SCOPED_TRACE(std::string(name) + " " + key + " " + one.where);
                EXPECT_FALSE(one.expect.empty());
                EXPECT_FALSE(one.limit.empty());
                EXPECT_TRUE(!one.value || (std::isfinite(*one.value) && !one.unit.empty()));
                EXPECT_TRUE(!one.bound || (std::isfinite(*one.bound) && !one.unit.empty()));
            }
        }
    }
}

TEST(Expected, EveryStepThatGivesAFigureNamesItsInstrument) {
    const Made& demo = made("demo");
    const Subject& subject = demo.subject();
    for (const tables::TestStep& step : subject.catalogue.tests) {
        for (const Expected& one : expected_of(subject, step)) {
            EXPECT_TRUE(one.unit.empty() || !instrument_of(step).empty()) << step.key;
        }
    }
}

}  // namespace
}  // namespace toft::paper
