#include "paper/expected.h"
#include "paper/papers.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using page::Heading;

/// The steps made dead, or those made live, in one table; `number` counts on.
page::Table table_of(const Subject& s, bool dead, int& number) {
    page::Table table{{{"Where", 4.4}, {"Expect", 3}, {"Limit", 3}, {"Reading", 2}}, {}, true};
    for (const tables::TestStep& step : s.catalogue.tests) {
        if (step.dead != dead) continue;
        const Expectations all = expected_of(s, step);
        if (all.empty()) continue;
        table.rows.push_back(
            {{fmt::format("{}. {} ({})", ++number, step.what, step.clause)}, true});
        table.rows.push_back({{step.how + "."}});
        for (const Expected& one : all) {
            table.rows.push_back({{one.where, one.expect, one.limit, ""}});
        }
    }
    return table;
}

}  // namespace

page::Paper test_sheet(const Subject& s) {
    page::Paper paper = blank(s, "Test sheet");
    paper.blocks.push_back(Heading{"Tests of " + s.answer.job, page::Level::chapter});
    paper.blocks.push_back(page::Words{s.answer.schemes[s.scheme].sentence});
    paper.blocks.push_back(page::Caution{
        "If a test fails, put it right and repeat it with every earlier one it may have touched. "
        "Live tests are for a competent person with probes and leads that are fit for it. What is "
        "expected here was calculated; the reading decides."});
    int number = 0;
    paper.blocks.push_back(Heading{"Dead: everything isolated and proved dead"});
    paper.blocks.push_back(table_of(s, true, number));
    paper.blocks.push_back(Heading{"Live"});
    paper.blocks.push_back(table_of(s, false, number));
    paper.blocks.push_back(Heading{"Who tested, with what"});
    for (const char* name : {"Instruments and their numbers", "Weather and state of the ground",
                             "Remarks", "Tested by", "Date and signature"}) {
        paper.blocks.push_back(page::Field{name});
    }
    return paper;
}

}  // namespace toft::paper
