// The list of materials on paper: all of it, and nothing of what it costs.

#include "paper/materials.h"

#include "paper/papers.h"
#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

ware::List list_of(const Made& made) {
    return ware::list_of(support::catalogue(), made.job, made.answer.schemes.front());
}

/// Rows of the tables with numbers before them, of which there is one for each row of the list.
std::size_t numbered(const page::Paper& paper) {
    std::size_t count = 0;
    for (const page::Block& block : paper.blocks) {
        const auto* table = std::get_if<page::Table>(&block);
        if (table && table->columns.front().head == "No.") count += table->rows.size();
    }
    return count;
}

TEST(MaterialsPaper, EveryRowOfTheListStandsOnItWithItsQuantityAndNote) {
    for (const char* name : {"demo", "garage-gym-stable", "three-phase-barn", "overhead-stable"}) {
        const Made& job = made(name);
        const page::Paper paper = materials(job.subject());
        const ware::List list = list_of(job);
        EXPECT_EQ(numbered(paper), list.rows.size()) << name;
        EXPECT_TRUE(inside_sheets(paper)) << name;
        for (const ware::Row& row : list.rows) {
            EXPECT_TRUE(says(paper, row.what.substr(1))) << name << ": " << row.what;
            EXPECT_TRUE(says(paper, row.order)) << name << ": " << row.order;
            if (!row.note.empty()) {
                EXPECT_TRUE(says(paper, row.note.substr(1))) << name << ": " << row.note;
            }
        }
    }
}

TEST(MaterialsPaper, SaysNoPriceAndToHoldItAgainstTheCable) {
    const page::Paper paper = materials(made("demo").subject());
    EXPECT_FALSE(says(paper, "£"));
    EXPECT_TRUE(says(paper, "against the cable in hand"));
    EXPECT_TRUE(says(paper, "Smallest radius of a bend"));
    EXPECT_TRUE(says(paper, "memory"));
}

TEST(MaterialsPaper, NothingToBuyIsSaid) {
    const page::Paper paper = materials_of(made("demo").subject(), {});
    EXPECT_TRUE(says(paper, "Nothing is to be bought"));
}

TEST(MaterialsPaper, APullIsNeverCalledFine) {
    ware::List list;
    list.handling = {
        {"Garage", "3-core 10 mm²", "37 m", "117 mm", "30 m straight: about 130 N dry"}};
    const page::Paper paper = materials_of(made("demo").subject(), list);
    EXPECT_TRUE(says(paper, "An estimate: feel the pull, stop when it grows"));
}

}  // namespace
}  // namespace toft::paper
