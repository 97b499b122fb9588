#include "diagram/run_figures.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

std::string value_of(const std::vector<Figure>& figures, const std::string& word) {
    for (const Figure& figure : figures) {
        if (figure.word == word) return figure.value;
    }
    return "absent";
}

TEST(RunFigures, StandWhereTheyAreMet) {
    const answer::SchemeAnswer& scheme = example("demo").answer.schemes[0];
    EXPECT_EQ(value_of(near_figures(scheme.run), "breaking capacity"), "6 kA");
    EXPECT_EQ(value_of(near_figures(scheme.run), "fault here, line to neutral"), "1.04 to 1.2 kA");
    EXPECT_EQ(value_of(cable_figures(scheme.run.figures), "load current"), "17.8 A");
    EXPECT_EQ(value_of(cable_figures(scheme.run.figures), "voltage drop"), "0.843 %");
    EXPECT_EQ(value_of(loop_figures(scheme), "loop, line to earth"), "0.329 Ω");
    EXPECT_EQ(value_of(loop_figures(scheme), "at most"), "1.37 Ω");
    EXPECT_EQ(value_of(fault_figures(scheme), "cleared in"), "0.1 s");
}

TEST(RunFigures, BehindAnRcdTheLoopIsJudgedByTheRcd) {
    const answer::SchemeAnswer* found =
        picture::scheme_where(example("aluminium-pair-mill"),
                              [](const auto& s) { return s.run.rcd && s.run.rcd->delayed; });
    ASSERT_NE(found, nullptr);
    const answer::SchemeAnswer& scheme = *found;
    const std::vector<Figure> figures = loop_figures(scheme);
    EXPECT_EQ(value_of(figures, "at most, for the RCD"), "500 Ω");
    EXPECT_EQ(value_of(fault_figures(scheme), "cleared by"), "the RCD at the head");
    EXPECT_EQ(value_of(figures, "at most when tested cold"), "absent");
}

TEST(RunFigures, AFaultThatNothingClearsIsNotCalledCleared) {
    answer::SchemeAnswer scheme = example("demo").answer.schemes[0];
    ASSERT_FALSE(scheme.run.rcd.has_value());
    scheme.run.figures.disconnection_s.reset();
    EXPECT_EQ(value_of(fault_figures(scheme), "cleared by"), "not known");
}

TEST(RunFigures, WithAnElectrodeOfItsOwnTheLoopIsThatOfTheArmour) {
    const Example& one = example("own-rod-greenhouse");
    const answer::SchemeAnswer* scheme = picture::scheme_where(one, picture::has_electrode);
    ASSERT_NE(scheme, nullptr);
    EXPECT_NE(value_of(loop_figures(*scheme), "loop, line to the armour"), "absent");
    EXPECT_EQ(value_of(loop_figures(*scheme), "loop, line to earth"), "absent");
}

TEST(RunFigures, ThreePhasesHaveTheirOwnFaults) {
    const answer::SchemeAnswer& three = example("three-phase-barn").answer.schemes[0];
    ASSERT_EQ(three.run.phases, 3);
    for (const auto& figures : {near_figures(three.run), fault_figures(three)}) {
        EXPECT_NE(value_of(figures, "fault here, line to line"), "absent");
        EXPECT_NE(value_of(figures, "fault here, three lines, largest"), "absent");
    }
    const answer::SchemeAnswer& one = example("demo").answer.schemes[0];
    EXPECT_EQ(value_of(near_figures(one.run), "fault here, line to line"), "absent");
    EXPECT_EQ(value_of(near_figures(one.run), "fault here, three lines, largest"), "absent");
}

TEST(RunFigures, AnRcboClearsWhatItsResidualPartClears) {
    const answer::SchemeAnswer& scheme = example("hidden-flat-cable").answer.schemes[0];
    ASSERT_EQ(scheme.run.device.kind, "RCBO");
    EXPECT_NE(value_of(loop_figures(scheme), "at most, for the RCBO"), "absent");
    EXPECT_EQ(value_of(fault_figures(scheme), "cleared by"), "the RCBO at the head");
}

TEST(RunFigures, OfTheWholeRunTellLengthAndGoverningLeg) {
    answer::FigureAnswers f = example("demo").answer.schemes[0].run.figures;
    f.governing_leg = 2;
    EXPECT_EQ(value_of(cable_figures(f, true), "the whole run"), "30 m");
    EXPECT_EQ(value_of(cable_figures(f, true), "least rating as laid, leg 2"),
              value_of(cable_figures(f), "cable's rating as laid"));
}

TEST(RunFigures, ADropBeforeTheRunIsTold) {
    answer::FigureAnswers f = example("demo").answer.schemes[0].run.figures;
    EXPECT_EQ(value_of(cable_figures(f), "drop from the origin"), "absent");
    f.voltage_drop_total_percent = 2.9;
    EXPECT_EQ(value_of(cable_figures(f), "drop from the origin"), "2.9 %");
}

}  // namespace
}  // namespace toft::diagram
