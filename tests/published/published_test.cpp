// Every published example in this folder is worked out with the program's own functions.

#include "published/methods.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace toft::published {
namespace {

using support::CaseFile;
using support::PublishedCase;

std::vector<std::filesystem::path> case_files() {
    std::vector<std::filesystem::path> files;
    for (const auto& entry :
         std::filesystem::directory_iterator(TOFT_SOURCE_DIR "/tests/published")) {
        if (entry.path().extension() == ".case") files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

CaseFile read(const std::filesystem::path& path) {
    std::ifstream in(path);
    std::ostringstream text;
    text << in.rdbuf();
    return support::read_cases(path.filename().string(), text.str());
}

std::vector<PublishedCase> all_cases() {
    std::vector<PublishedCase> all;
    for (const auto& path : case_files()) {
        for (PublishedCase& one : read(path).cases) all.push_back(std::move(one));
    }
    return all;
}

std::string test_name(const ::testing::TestParamInfo<PublishedCase>& info) {
    std::string name = info.param.file.substr(0, info.param.file.find('.')) + "_line_" +
                       std::to_string(info.param.line);
    return name;
}

class Published : public ::testing::TestWithParam<PublishedCase> {};

TEST_P(Published, ExampleIsMet) {
    const PublishedCase& example = GetParam();
    SCOPED_TRACE(example.file + ":" + std::to_string(example.line) + ": " + example.title);
    for (const std::string& says : unmet(example, work_out(example))) ADD_FAILURE() << says;
}

INSTANTIATE_TEST_SUITE_P(Examples, Published, ::testing::ValuesIn(all_cases()), test_name);

TEST(PublishedCases, AreAllWellFormed) {
    for (const auto& path : case_files()) {
        for (const std::string& fault : read(path).faults) ADD_FAILURE() << fault;
    }
}

/// Figures that were remembered say so in their locator: they are no outside witness.
bool seen(const PublishedCase& one) { return one.locator.find("not seen") == std::string::npos; }

TEST(PublishedCases, HoldAtLeastThreeHundredChecksAgainstPagesThatWereSeen) {
    std::size_t checks = 0;
    for (const PublishedCase& one : all_cases()) checks += seen(one) ? one.checks.size() : 0;
    EXPECT_GE(checks, 300u);
}

const char* const well_formed = R"(method earth fault loop
case one
source a book, locator page 3
given Ze 0.6 ohm
expect Zs 0.96 ohm within 0.5 %
)";

std::string without(const std::string& line_start) {
    std::string kept;
    std::istringstream in(well_formed);
    for (std::string line; std::getline(in, line);) {
        if (line.rfind(line_start, 0) != 0) kept += line + "\n";
    }
    return kept;
}

TEST(PublishedCases, ReadAsTheyAreWritten) {
    const CaseFile file = support::read_cases("x.case", well_formed);
    ASSERT_EQ(file.cases.size(), 1u);
    EXPECT_TRUE(file.faults.empty());
    EXPECT_EQ(file.cases[0].source, "a book");
    EXPECT_EQ(file.cases[0].locator, "page 3");
    EXPECT_EQ(file.cases[0].number("Ze"), 0.6);
    EXPECT_EQ(unmet(file.cases[0], {{"Zs", 0.9624}}).size(), 0u);
    EXPECT_EQ(unmet(file.cases[0], {{"Zs", 0.902}}).size(), 1u);
    EXPECT_EQ(unmet(file.cases[0], {{"other", 0.96}}).size(), 1u);
}

TEST(PublishedCases, AreRefusedWithoutSourceOrLocatorOrMethodOrExpectation) {
    for (const char* left_out : {"source", "method", "expect"}) {
        const CaseFile file = support::read_cases("x.case", without(left_out));
        EXPECT_FALSE(file.faults.empty()) << left_out;
        EXPECT_TRUE(file.cases.empty()) << left_out;
    }
    const std::string no_locator = without("source") + "source a book\n";
    EXPECT_FALSE(support::read_cases("x.case", no_locator).faults.empty());
    EXPECT_FALSE(support::read_cases("x.case", "").faults.empty());
}

TEST(PublishedCases, AreRefusedWithUnknownWordsUnitsAndNumbers) {
    for (const char* bad :
         {"given Ze 0.6 stone", "given Ze much ohm", "expect Zs 1 ohm about right",
          "guess Zs 1 ohm", "method second", "given Ze nan ohm", "source"}) {
        EXPECT_FALSE(support::read_cases("x.case", std::string(well_formed) + bad).faults.empty())
            << bad;
    }
}

TEST(PublishedCases, SayWhyAFigureIsRefusedAndNoticeWhenItComesOut) {
    const std::string refusing = std::string(well_formed) + "refuse Zs 0.9 ohm\n";
    EXPECT_FALSE(support::read_cases("x.case", refusing).faults.empty());
    const CaseFile file = support::read_cases("x.case", refusing + "because it is cold\n");
    ASSERT_EQ(file.cases.size(), 1u);
    EXPECT_EQ(unmet(file.cases[0], {{"Zs", 0.96}}).size(), 0u);
    EXPECT_EQ(unmet(file.cases[0], {{"Zs", 0.901}}).size(), 2u);
}

}  // namespace
}  // namespace toft::published
