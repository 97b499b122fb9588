// The test sheet: what to expect where, and how far it may go.

#include "base/text.h"
#include "paper/papers.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

page::Paper tests_of(const std::string& name) { return test_sheet(made(name).subject()); }

std::size_t position(const page::Paper& paper, const std::string& words) {
    return field_words(paper).find(without_spaces(words));
}

TEST(TestSheet, DeadTestsComeBeforeLiveOnesAndStandInTheOrderOfTheBook) {
    // BS 7671:2018, 643.1: the order of 643.2 to 643.6 comes before the supply is connected.
    const page::Paper paper = tests_of("demo");
    std::size_t before = 0;
    for (const char* step :
         {"Dead: everything isolated", "Inspection (642)",
          "Line and protective conductor of the "
          "run (643.2.1)",
          "Bonding conductors (643.2.1)", "Insulation resistance (643.3)", "Polarity (643.6)",
          "Earth fault loop at the building's board (643.7.3)", "Prospective fault current",
          "Residual current devices (643.8)", "Switches and isolators (643.10)"}) {
        const std::size_t at = position(paper, step);
        ASSERT_NE(at, std::string::npos) << step;
        EXPECT_GT(at + 1, before) << step;
        before = at;
    }
}

TEST(TestSheet, ExpectsTheFiguresOfTheAnswer) {
    const Made& demo = made("demo");
    const page::Paper paper = test_sheet(demo.subject());
    const answer::SchemeAnswer& s = demo.answer.schemes.front();
    const auto& f = s.run.figures;
    for (const std::string& words :
         {figure(f.r1_plus_r2_20c_ohm, "Ω"), "at most " + figure(f.loop_impedance_far_ohm, "Ω"),
          "cold at most " + figure(f.loop_impedance_test_limit_ohm, "Ω"),
          "at most " + figure(f.fault_current_near_ka, "kA"),
          "at most " + figure(f.fault_current_far_ka, "kA")}) {
        EXPECT_TRUE(says(paper, words)) << words;
    }
    ASSERT_FALSE(s.building.circuits.empty());
    for (const answer::CircuitAnswer& c : s.building.circuits) {
        EXPECT_TRUE(says(paper, c.name + ", R1+R2 at 20 °C" + figure(c.r1_plus_r2_20c_ohm, "Ω")));
        ASSERT_TRUE(c.loop_test_limit_ohm);
        EXPECT_TRUE(says(paper, "cold at most " + figure(*c.loop_test_limit_ohm, "Ω")));
    }
}

TEST(TestSheet, ABuildingWithItsOwnElectrodeHasItReadAndItsArmourProvedApart) {
    const page::Paper own = tests_of("own-rod-greenhouse");
    const answer::SchemeAnswer& s = made("own-rod-greenhouse").answer.schemes.front();
    ASSERT_EQ(s.building.earthing, "own electrode");
    EXPECT_TRUE(says(own, "Earth electrode (643.7.2)"));
    EXPECT_TRUE(says(own, "at most " + figure(s.building.electrode->largest_ohm, "Ω", 4)));
    EXPECT_TRUE(says(own, "No way from the armour to the building's earth"));
    const page::Paper shared = tests_of("demo");
    EXPECT_FALSE(says(shared, "No way from the armour"));
    EXPECT_FALSE(says(shared, "Earth electrode"));
}

TEST(TestSheet, NoResidualDeviceIsLeftUntested) {
    for (const char* name : {"demo", "tt-shed", "garage-gym-stable", "own-rod-greenhouse"}) {
        const Subject subject = made(name).subject();
        std::size_t wanted = 0;
        for (const auto* part : runs_of(subject)) {
            wanted += part->building.rcds.size() + (part->run.rcd ? 1 : 0);
        }
        std::size_t rows = 0;
        for (const page::Block& block : test_sheet(subject).blocks) {
            const auto* table = std::get_if<page::Table>(&block);
            if (!table) continue;
            for (const page::Row& row : table->rows) {
                rows += row.cells.size() > 1 && row.cells[1] == "opens at its rated current";
            }
        }
        EXPECT_EQ(rows, wanted) << name;
    }
}

TEST(TestSheet, EveryTestHasRoomForAReadingAndNoneIsFilledIn) {
    for (const page::Block& block : tests_of("tt-shed").blocks) {
        const auto* table = std::get_if<page::Table>(&block);
        if (!table) continue;
        EXPECT_TRUE(table->to_write_in);
        EXPECT_EQ(table->columns.back().head, "Reading");
        for (const page::Row& row : table->rows) {
            if (row.cells.size() == 1) continue;
            EXPECT_EQ(row.cells.at(3), "");
        }
    }
}

TEST(TestSheet, FortyCircuitsAreAllThere) {
    const Made many = crowded(40, "Long barn");
    const page::Paper paper = test_sheet(many.subject());
    for (std::size_t i = 1; i <= 40; ++i) {
        const std::string name = "Long barn " + std::to_string(i);
        EXPECT_EQ(rows_that_begin(paper, name), 1u) << name;
        EXPECT_EQ(rows_that_begin(paper, name + ", R1+R2 at 20 °C"), 1u) << name;
    }
}

}  // namespace
}  // namespace toft::paper
