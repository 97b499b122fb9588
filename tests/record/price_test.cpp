// The price in a design record: its bill adds up to it.

#include "paper/subjects.h"
#include "record/parts.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

std::size_t bill_rows(const Blocks& blocks) {
    std::size_t rows = 0;
    for (const page::Block& block : blocks) {
        const auto* table = std::get_if<page::Table>(&block);
        if (!table || table->columns.front().head != "What") continue;
        for (const page::Row& row : table->rows) rows += !row.strong;
    }
    return rows;
}

TEST(RecordPrice, EveryLineOfEveryBillStandsThereAndTheSumIsTheAnswers) {
    for (const char* name : {"demo", "garage-gym-stable"}) {
        const Subject subject = made(name).subject();
        const Blocks blocks = record_of_price(subject);
        std::size_t lines = 0;
        double sum = 0;
        for (const auto* part : runs_of(subject)) {
            lines += part->bill.size();
            for (const price::BillLine& line : part->bill) sum += line.amount.number();
        }
        EXPECT_EQ(bill_rows(blocks), lines) << name;
        const page::Paper paper = paper_with(subject, blocks);
        EXPECT_TRUE(says(paper, pence_words(sum) + " before tax")) << name;
        EXPECT_TRUE(says(paper, pence_words(made(name).answer.schemes.front().price.total)));
    }
}

TEST(RecordPrice, LabourStandsByTask) {
    const Subject subject = made("demo").subject();
    const page::Paper paper = paper_with(subject, record_of_price(subject));
    for (const auto& task : price::hours_by_task(subject.answer.schemes.front().bill)) {
        EXPECT_TRUE(says(paper, task.task)) << task.task;
        EXPECT_TRUE(says(paper, pence_words(task.amount.number()))) << task.task;
    }
}

TEST(RecordPrice, ARangeIsSaidWhereTheBookGivesOne) {
    Made one = made("demo");
    answer::PriceAnswer& price = one.answer.schemes.front().price;
    EXPECT_TRUE(says(paper_with(one.subject(), record_of_price(one.subject())),
                     pence_words(price.total_low) + " to " + pence_words(price.total_high)));
    price.total_low = price.total_high = price.total;
    EXPECT_FALSE(says(paper_with(one.subject(), record_of_price(one.subject())), "at its lowest"));
}

}  // namespace
}  // namespace toft::paper
