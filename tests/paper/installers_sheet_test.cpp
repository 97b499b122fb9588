#include "paper/papers.h"

#include "base/text.h"
#include "paper/sheets.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::paper {
namespace {

using page::Read;

std::vector<drawing::Scene> sheets_of(const Example& one, std::size_t scheme = 0) {
    return page::pages(installers_sheet(sheet_subject(one, scheme)));
}

/// Words beyond the sheet and words over words.
std::string trouble(const std::vector<drawing::Scene>& sheets) {
    std::string found;
    for (const drawing::Scene& sheet : sheets) {
        found += picture::clashes(sheet.items, {0, 0, sheet.width, sheet.height});
    }
    return found;
}

/// Without the marks of lists, which stand behind the first line of what they mark.
std::string without_marks(std::string words) {
    const std::string mark = "–";
    for (std::size_t at = words.find(mark); at != std::string::npos; at = words.find(mark, at)) {
        words.erase(at, mark.size());
    }
    return words;
}

bool tells(const std::vector<drawing::Scene>& sheets, const std::string& words) {
    return without_marks(page::run_on(page::read_field(sheets)))
               .find(without_marks(packed(words))) != std::string::npos;
}

TEST(InstallersSheet, EveryRunHasItsOwnPagesFromTheHouseOutwards) {
    const Example& one = example("garage-gym-stable");
    const Subject subject = sheet_subject(one);
    const auto sheets = sheets_of(one);
    std::size_t before = 0;
    bool first = true;
    for (const answer::SchemeAnswer* part : runs_of(subject)) {
        std::size_t at = sheets.size();
        for (const Read& read : page::read_field(sheets)) {
            if (read.words.rfind(part->run.id + ": from ", 0) == 0) at = read.sheet;
        }
        ASSERT_LT(at, sheets.size()) << part->run.id;
        EXPECT_TRUE(first ? at == 0 : at > before);
        before = at;
        first = false;
    }
}

TEST(InstallersSheet, NothingRunsOffOrOverOnAnyExample) {
    for (const std::string& name : sheet_examples()) {
        const auto sheets = sheets_of(example(name));
        EXPECT_EQ(trouble(sheets), "") << name;
        EXPECT_EQ(page::read_field(sheets).size() + 6 * sheets.size(), page::read(sheets).size())
            << name << ": something stands outside the field";
    }
}

TEST(InstallersSheet, EveryFigureThatIsBuiltIsTheAnswers) {
    for (const std::string& name : sheet_examples()) {
        const Example& one = example(name);
        const auto sheets = sheets_of(one);
        for (const answer::SchemeAnswer* part : runs_of(sheet_subject(one))) {
            SCOPED_TRACE(name + " " + part->run.id);
            EXPECT_TRUE(tells(sheets, significant(part->run.device.rating_a, 6) + " A"));
            EXPECT_TRUE(tells(sheets, significant(part->run.figures.fault_current_far_ka, 3) +
                                          " kA: its devices"));
            for (const answer::StretchAnswer& s : part->run.stretches) {
                EXPECT_TRUE(tells(sheets, significant(s.length_m, 4) + " m in all"));
            }
            for (const std::string& caution : part->cautions) {
                EXPECT_TRUE(tells(sheets, caution)) << caution;
            }
            for (const std::string& work : part->house_work) EXPECT_TRUE(tells(sheets, work));
        }
        for (const std::string& caution : one.answer.cautions) {
            EXPECT_TRUE(tells(sheets, caution)) << caution;
        }
    }
}

TEST(InstallersSheet, FortyCircuitsAreAllThereOverItsPages) {
    for (const char* name : {"demo", "three-phase-barn"}) {
        const Example one = board::many_ways(name, 40);
        const auto sheets = sheets_of(one);
        EXPECT_EQ(trouble(sheets), "") << name;
        std::multiset<std::string> numbers;
        for (const Read& read : page::read_field(sheets)) numbers.insert(read.words);
        for (int i = 1; i <= 40; ++i) {
            EXPECT_GE(numbers.count(std::to_string(i)), 1U) << name << " " << i;
            EXPECT_TRUE(tells(sheets, std::to_string(100 + i))) << name << " " << i;
        }
        EXPECT_GT(sheets.size(), 2U);
    }
}

TEST(InstallersSheet, LongAndEmptyNamesKeepToTheirRoom) {
    for (const std::string& name :
         {std::string(60, 'W'), std::string(), board::long_name(1), picture::hostile_name()}) {
        Example one = example("three-phase-barn");
        one.job.title = one.answer.job = name;
        for (site::Building& building : one.job.buildings) {
            building.name = name;
            for (site::Circuit& circuit : building.circuits) circuit.name = name;
        }
        answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
        scheme.building.name = name;
        for (answer::BondAnswer& bond : scheme.building.bonding) bond.part = name;
        for (answer::CircuitAnswer& circuit : scheme.building.circuits) circuit.name = name;
        for (answer::RcdAnswer& rcd : scheme.building.rcds) rcd.covers.assign(10, name);
        scheme.house_work = {name, name};
        scheme.cautions = {name};
        EXPECT_EQ(trouble(sheets_of(one)), "") << name;
        scheme.run.feeder = name.empty() ? "x" : name;
        EXPECT_EQ(trouble(sheets_of(one)), "") << name;
    }
}

TEST(InstallersSheet, ARunFromAnotherBuildingIsNotJoinedAtTheHouse) {
    const Example& one = example("garage-gym-stable");
    const Subject subject = sheet_subject(one);
    const RunSheet gym = run_sheet(subject, *runs_of(subject)[1]);
    EXPECT_EQ(near_words(gym), "the board of Garage");
    EXPECT_TRUE(tells(sheets_of(one), "gym-feed: from the board of Garage to Gym"));
}

TEST(InstallersSheet, SameSubjectSamePages) {
    const Example& one = example("tt-shed");
    const auto a = sheets_of(one);
    const auto b = sheets_of(one);
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        EXPECT_EQ(drawing::to_svg(a[i]), drawing::to_svg(b[i]));
    }
}

}  // namespace
}  // namespace toft::paper
