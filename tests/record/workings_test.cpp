// Workings in a design record: every line once.

#include "record/parts.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace toft::paper {
namespace {

TEST(RecordWorkings, EveryLineStandsOnceAndReadsOnlyLinesAboveIt) {
    const Made& demo = made("demo");
    Subject subject = demo.subject();
    subject.workings = workings_of(support::question_of(demo.job), demo.answer.schemes.front());
    std::size_t numbered = 0, groups = 0;
    for (const page::Block& block : record_of_workings(subject)) {
        const auto* table = std::get_if<page::Table>(&block);
        if (!table) continue;
        for (const page::Row& row : table->rows) {
            groups += row.cells.size() == 1;
            if (row.cells.size() < 5 || row.cells.front().empty()) continue;
            EXPECT_EQ(row.cells.front(), std::to_string(++numbered));
            const std::string& formula = row.cells[4];
            const std::size_t open = formula.rfind('[');
            if (formula.rfind("= ", 0) != 0 || open == std::string::npos) continue;
            for (std::size_t at = open + 1; at < formula.size(); ++at) {
                char* end = nullptr;
                const auto line = std::strtoul(formula.c_str() + at, &end, 10);
                EXPECT_GT(line, 0u) << formula;
                EXPECT_LT(line, numbered) << formula;
                at = static_cast<std::size_t>(end - formula.c_str());
            }
        }
    }
    EXPECT_GT(numbered, 100u);
    EXPECT_EQ(numbered, subject.workings.front().lines);
    EXPECT_EQ(groups, subject.workings.front().all.size());
}

TEST(RecordWorkings, WithoutWorkingsNothingIsSaidOfThem) {
    EXPECT_TRUE(record_of_workings(made("demo").subject()).empty());
}

}  // namespace
}  // namespace toft::paper
