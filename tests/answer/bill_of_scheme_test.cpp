// The bill of a scheme is its price, line by line; the bills of a tree's runs that of the whole.

#include "answer/recorded.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

void expect_to_be(const price::Bill& bill, const PriceAnswer& price, const price::Book& book) {
    const auto summed = price::price_of_bill(bill, book);
    EXPECT_EQ(summed.house_end.number(), price.house_end);
    EXPECT_EQ(summed.run.number(), price.run);
    EXPECT_EQ(summed.ground.number(), price.ground);
    EXPECT_EQ(summed.far_end.number(), price.far_end);
    EXPECT_EQ(summed.test_and_paper.number(), price.test_and_paper);
    EXPECT_EQ(summed.remedies.number(), price.put_right_first);
    EXPECT_EQ(summed.net.number(), price.net);
    EXPECT_EQ(summed.vat.number(), price.vat);
    EXPECT_EQ(summed.total.number(), price.total);
}

TEST(BillOfScheme, OfEveryExampleOfOneRunAddsUpToItsPrice) {
    int seen = 0;
    for (const std::string& name : support::example_names()) {
        const site::Job job = support::example_job(name, support::catalogue());
        if (job.runs.size() > 1) continue;
        const Answer answer = design(support::question_of(job));
        for (const SchemeAnswer& s : answer.schemes) {
            SCOPED_TRACE(name + " " + s.key);
            expect_to_be(s.bill, s.price, support::demo_book());
            EXPECT_LE(s.price.total_low, s.price.total);
            EXPECT_GE(s.price.total_high, s.price.total);
            ++seen;
        }
    }
    EXPECT_GT(seen, 50);
}

class TreeBills : public testing::Test {
protected:
    void expect_all_to_add_up() const {
        ASSERT_FALSE(answer_.schemes.empty());
        for (const SchemeAnswer& s : answer_.schemes) {
            price::Bill all = s.bill;
            for (const SchemeAnswer& part : s.further) {
                expect_to_be(part.bill, part.price, question_.book);
                all.insert(all.end(), part.bill.begin(), part.bill.end());
            }
            const auto summed = price::price_of_bill(all, question_.book);
            EXPECT_EQ(summed.net.number(), s.price.net);
            EXPECT_EQ(price::price_of_bill(s.bill, question_.book).total.number(), s.run_total);
        }
    }

    site::Job job_ = support::tree_job({support::the_house, 0, 0});
    Question question_{support::small_shop().catalogue, support::small_shop().book, job_};
    Answer answer_ = design(question_);
};

TEST_F(TreeBills, AddUpToTheWhole) { expect_all_to_add_up(); }

TEST_F(TreeBills, WhatIsBoughtOnceForThePlaceIsOnOneOfThem) {
    job_.intake.main_bonding = support::measured(square_millimetres(0));
    answer_ = design(question_);
    expect_all_to_add_up();
    const SchemeAnswer& s = answer_.schemes.front();
    std::size_t times = 0;
    const auto count = [&](const SchemeAnswer& part) {
        times += static_cast<std::size_t>(std::count_if(
            part.bill.begin(), part.bill.end(),
            [](const price::BillLine& line) { return line.part == price::Part::remedies; }));
    };
    count(s);
    for (const SchemeAnswer& part : s.further) count(part);
    EXPECT_EQ(times, 1u);
}

}  // namespace
}  // namespace toft::answer
