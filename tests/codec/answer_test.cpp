#include "codec/answer.h"

#include "codec/designing.h"
#include "codec/fits.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace toft::codec {
namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

/// True when each number of `json` is written with at most nine significant digits.
bool brief(const Tree& json) {
    if (json.is_structured()) {
        for (const Tree& inner : json) {
            if (!brief(inner)) return false;
        }
        return true;
    }
    if (!json.is_number_float()) return true;
    return json.get<double>() == std::stod(fmt::format("{:.9g}", json.get<double>()));
}

TEST(AnswerText, FitsItsSchemaAndIsTheSameEveryTime) {
    const std::string once = write_answer(designed(demo()));
    EXPECT_EQ(once, write_answer(designed(demo())));
    EXPECT_EQ(once.back(), '\n');
    expect_fits("answer", once);
    const Tree json = Tree::parse(once);
    EXPECT_TRUE(brief(json));
    EXPECT_EQ(json["job"], "Potter's studio, Wrensnest, Ashlow Green");
    EXPECT_FALSE(json["schemes"].empty());
    EXPECT_EQ(json["search"]["milliseconds"], 0) << "there was no clock";
}

TEST(AnswerText, OnOneLineItIsTheSameDocument) {
    const answer::Answer answer = designed(small_job());
    const std::string line = write_answer(answer, Layout::one_line);
    EXPECT_EQ(std::count(line.begin(), line.end(), '\n'), 1);
    EXPECT_EQ(line.back(), '\n');
    EXPECT_EQ(Tree::parse(line), Tree::parse(write_answer(answer)));
    const Faults faults{{"missing", "/runs", "a feed\nin the words", "", {"a", "b"}}};
    const std::string at_fault = write_faults(faults, Layout::one_line);
    EXPECT_EQ(std::count(at_fault.begin(), at_fault.end(), '\n'), 1);
    EXPECT_EQ(Tree::parse(at_fault), Tree::parse(write_faults(faults)));
}

TEST(AnswerText, AJobOfThreeFactsFitsItToo) {
    const std::string text = write_answer(designed(small_job()));
    expect_fits("answer", text);
    EXPECT_FALSE(Tree::parse(text)["unknowns"].empty());
}

TEST(AnswerText, HostileNamesSurvive) {
    const std::string hostile = "</svg>\"'\\ & {0} %s 炉 \xf0\x9f\x94\x8c \xe2\x80\xa8/~";
    const std::string longest = std::string(197, 'x') + "\xe7\x82\x89";
    ASSERT_EQ(longest.size(), 200u);
    Tree job = demo();
    job["title"] = hostile;
    job["buildings"][1]["id"] = longest;
    job["buildings"][1]["name"] = hostile;
    job["buildings"][1]["circuits"][0]["name"] = hostile;
    job["runs"][0]["id"] = hostile;
    job["runs"][0]["to"] = longest;
    const std::string text = write_answer(designed(job));
    expect_fits("answer", text);
    const Tree json = Tree::parse(text);
    EXPECT_EQ(json["job"], hostile);
    ASSERT_FALSE(json["schemes"].empty());
    const Tree& scheme = json["schemes"][0];
    ASSERT_TRUE(scheme["buildings"].contains(longest));
    ASSERT_TRUE(scheme["runs"].contains(hostile));
    EXPECT_EQ(scheme["findings"][0]["subject"], hostile);
    EXPECT_EQ(scheme["buildings"][longest]["board"]["rcds"][0]["covers"][0], hostile);
}

TEST(AnswerText, NothingEndlessIsEverWritten) {
    answer::Answer a;
    answer::SchemeAnswer s;
    s.headroom = -endless;
    s.run.figures.loop_impedance_limit_ohm = endless;
    s.run.figures.loop_impedance_far_ohm = std::nan("");
    s.run.figures.disconnection_s = endless;
    s.run.figures.longest_m = {{"voltage-drop", endless}};
    answer::FindingAnswer f;
    f.value = endless;
    f.limit = std::nan("");
    s.findings.push_back(f);
    answer::SelectivityAnswer pair;
    pair.prospective_a = endless;
    s.selectivity.push_back(pair);
    a.schemes.push_back(s);
    a.dropped.push_back({"r", "t", 1, "k", "", endless});
    answer::UnknownAnswer unknown;
    unknown.low = -endless;
    unknown.high = endless;
    a.unknowns.push_back(unknown);
    const Tree json = Tree::parse(write_answer(a));
    const Tree& scheme = json["schemes"][0];
    EXPECT_TRUE(scheme["headroom"].is_null());
    const Tree& figures = scheme["runs"][""]["figures"];
    EXPECT_TRUE(figures["loop_impedance_limit_ohm"].is_null());
    EXPECT_TRUE(figures["loop_impedance_far_ohm"].is_null());
    EXPECT_TRUE(figures["disconnection_s"].is_null());
    EXPECT_TRUE(figures["longest_m"]["voltage-drop"].is_null());
    EXPECT_TRUE(scheme["findings"][0]["value"].is_null());
    EXPECT_TRUE(scheme["selectivity"][0]["prospective_a"].is_null());
    EXPECT_TRUE(scheme["selectivity"][0]["gap_from_a"].is_null());
    EXPECT_EQ(scheme["selectivity"][0]["to_a"], 0);
    EXPECT_TRUE(json["dropped"][0]["nearest"]["use"].is_null());
    EXPECT_EQ(json["unknowns"][0]["range"], Tree::parse("[null, null]"));
}

TEST(FaultsText, FitItsSchema) {
    Faults faults =
        faults_in(R"({"format": "toft-job", "\u0001\"~/": 1, "intake": {"earthing": 1}})");
    ASSERT_GE(faults.size(), 4u);
    const std::string text = write_faults(faults);
    expect_fits("faults", text);
    const Tree json = Tree::parse(text);
    ASSERT_EQ(json["faults"].size(), faults.size());
    EXPECT_EQ(json["faults"][0]["nearest"], "toft-job/1");
    EXPECT_TRUE(json["faults"][1]["nearest"].is_null());
    EXPECT_EQ(json["faults"][2]["pointer"], "/\x01\"~0~1");
}

TEST(WorkingText, HasItsLinesWithFormulaAndSource) {
    answer::Working working{"n", "title", endless, "ohm", {}};
    Line plain;
    plain.symbol = "Ib";
    plain.value = 1.0 / 3;
    working.lines.push_back(plain);
    const Citation citation{"BOOK", "table 1", Basis::published, ""};
    Line cited = plain;
    cited.formula = "a + b";
    cited.citation = &citation;
    working.lines.push_back(cited);
    const Tree json = Tree::parse(write_working(working, "k"));
    EXPECT_EQ(json["format"], "toft-working/1");
    EXPECT_EQ(json["scheme"], "k");
    EXPECT_TRUE(json["value"].is_null());
    EXPECT_EQ(json["lines"][0]["value"], 0.333333333);
    EXPECT_FALSE(json["lines"][0].contains("formula"));
    EXPECT_FALSE(json["lines"][0].contains("source"));
    EXPECT_EQ(json["lines"][1]["formula"], "a + b");
    EXPECT_EQ(json["lines"][1]["source"], "BOOK");
    EXPECT_EQ(json["lines"][1]["basis"], "published");
}

}  // namespace
}  // namespace toft::codec
