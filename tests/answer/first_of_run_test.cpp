// The scheme written whole without working is the one that is written with it.

#include "answer/first.h"
#include "codec/scheme.h"
#include "support/questions.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {
namespace {

using codec::Json;

/// Takes out what the one may leave out: lengths by rule, and words for how well figures are known.
void leave_out(Json& json) {
    if (json.is_object()) {
        json.erase("longest_m");
        if (json.contains("verdict") && json.contains("basis")) json.erase("basis");
    }
    if (!json.is_structured()) return;
    for (Json& part : json) leave_out(part);
}

Json shared(const SchemeAnswer& scheme) {
    Json json = codec::scheme_json(scheme);
    leave_out(json);
    return json;
}

/// Figures that the document rounds.
std::vector<double> exact(const SchemeAnswer& s) {
    const FigureAnswers& f = s.run.figures;
    std::vector<double> all{f.length_m,
                            f.design_current_a,
                            f.rating_a,
                            f.voltage_drop_percent,
                            f.voltage_drop_total_percent,
                            f.loop_impedance_far_ohm,
                            f.loop_impedance_limit_ohm,
                            f.loop_impedance_test_limit_ohm,
                            f.fault_current_near_ka,
                            f.fault_current_far_ka,
                            f.earth_fault_current_far_a,
                            f.near_line_neutral_a.smallest,
                            f.near_line_earth_a.largest,
                            f.far_line_neutral_a.smallest,
                            f.far_line_earth_a.largest,
                            f.neutral_share,
                            f.disconnection_s.value_or(-1),
                            f.r1_plus_r2_20c_ohm,
                            f.touch.outbuilding_v,
                            f.touch.house_v,
                            f.touch.lasts_s.value_or(-1),
                            s.over_years.lost_kwh_year,
                            s.over_years.total,
                            s.price.net_low,
                            s.price.total_high,
                            s.headroom};
    for (const FindingAnswer& finding : s.findings) {
        all.push_back(finding.value.value_or(-1));
        all.push_back(finding.limit.value_or(-1));
        all.push_back(finding.use.value_or(-1));
    }
    for (const CircuitAnswer& c : s.building.circuits) {
        all.push_back(c.rating_a);
        all.push_back(c.drop_own_percent);
        all.push_back(c.r1_plus_r2_20c_ohm);
    }
    return all;
}

void expect_the_same(const SchemeAnswer& bare, const SchemeAnswer& whole) {
    EXPECT_EQ(shared(bare), shared(whole));
    const std::vector<double> a = exact(bare);
    const std::vector<double> b = exact(whole);
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        // Both infinite, or alike to twelve digits.
        const double most = std::max(std::fabs(a[i]), std::fabs(b[i]));
        EXPECT_TRUE(a[i] == b[i] || std::fabs(a[i] - b[i]) <= 1e-12 * most)
            << i << ": " << a[i] << ", " << b[i];
    }
}

TEST(FirstOfRun, TheChosenSchemeIsThatOfTheWholeAnswerFieldByField) {
    std::vector<std::string> names = support::example_names();
    for (const char* more :
         {"old-garage-cable", "overhead-stable", "own-rod-greenhouse", "flat-cable-room"}) {
        names.emplace_back(more);
    }
    for (const std::string& name : names) {
        SCOPED_TRACE(name);
        const site::Job job = support::example_job(name, support::catalogue());
        ASSERT_EQ(job.runs.size(), 1u);
        const Answer whole = design(support::question_of(job));
        for (const std::size_t i : {std::size_t{0}, whole.schemes.size() / 2}) {
            if (i >= whole.schemes.size()) continue;
            const FirstAnswer quick = first_of_run(support::question_of(job), whole.schemes[i].key);
            ASSERT_EQ(quick.chosen, i);
            expect_the_same(quick.answer.schemes[i], whole.schemes[i]);
        }
    }
}

TEST(FirstOfRun, OnThreePhasesToo) {
    const site::Job job = support::example_job("three-phase-barn", support::catalogue());
    Question question = support::question_of(job);
    question.most = 1;
    const Answer whole = design(question);
    const FirstAnswer quick = first_of_run(question, "");
    ASSERT_EQ(quick.chosen, std::size_t{0});
    expect_the_same(quick.answer.schemes[0], whole.schemes.at(0));
}

TEST(FirstOfRun, LeavesOutWhatNobodyIsShown) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const FirstAnswer quick = first_of_run(support::question_of(job), "");
    const SchemeAnswer& chosen = quick.answer.schemes.at(*quick.chosen);
    EXPECT_TRUE(chosen.run.figures.longest_m.empty());
    EXPECT_TRUE(chosen.bill.empty());
    ASSERT_FALSE(chosen.findings.empty());
    for (const FindingAnswer& finding : chosen.findings) EXPECT_TRUE(finding.basis.empty());
}

}  // namespace
}  // namespace toft::answer
