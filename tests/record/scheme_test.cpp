// The scheme and its rules in a design record.

#include "base/text.h"
#include "record/parts.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(RecordScheme, EveryFindingHasItsRowWithValueLimitAndUse) {
    for (const char* name : {"demo", "garage-gym-stable", "own-rod-greenhouse"}) {
        const Subject subject = made(name).subject();
        const Blocks blocks = record_of_rules(subject);
        std::size_t rows = 0, wanted = 0;
        for (const page::Block& block : blocks) {
            const auto* table = std::get_if<page::Table>(&block);
            if (table && table->columns.front().head == "Rule") rows += table->rows.size();
        }
        const page::Paper paper = paper_with(subject, blocks);
        for (const auto* part : runs_of(subject)) {
            wanted += part->findings.size();
            for (const auto& finding : part->findings) {
                if (!finding.value || !finding.limit || !finding.use) continue;
                EXPECT_TRUE(says(paper, significant(*finding.limit, 4))) << finding.rule;
                EXPECT_TRUE(says(paper, fixed(100 * *finding.use, 0) + " %")) << finding.rule;
            }
        }
        EXPECT_EQ(rows, wanted) << name;
    }
}

TEST(RecordScheme, EveryCircuitStandsOnce) {
    const Made many = crowded(40, "Long barn");
    std::size_t rows = 0;
    for (const page::Block& block : record_of_scheme(many.subject())) {
        const auto* table = std::get_if<page::Table>(&block);
        if (table && table->columns.size() > 4) rows += table->rows.size();
    }
    EXPECT_EQ(rows, many.answer.schemes.front().building.circuits.size());
    EXPECT_EQ(rows, 40u);
}

TEST(RecordScheme, SaysWhichEndOfTheArmourIsEarthed) {
    const page::Paper own = paper_with(made("own-rod-greenhouse").subject(),
                                       record_of_scheme(made("own-rod-greenhouse").subject()));
    EXPECT_TRUE(says(own, "earthed at the near end: yes; at the far end: no"));
    const page::Paper shared =
        paper_with(made("demo").subject(), record_of_scheme(made("demo").subject()));
    EXPECT_TRUE(says(shared, "earthed at the near end: yes; at the far end: yes"));
}

TEST(RecordScheme, WhereTheDeviceDoesNotClearTheResidualOneMust) {
    Made one = made("demo");
    one.answer.schemes.front().run.figures.disconnection_s.reset();
    const page::Paper paper = paper_with(one.subject(), record_of_scheme(one.subject()));
    EXPECT_TRUE(says(paper, "not by itself: the residual current device must"));
}

}  // namespace
}  // namespace toft::paper
