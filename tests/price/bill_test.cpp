#include "price/bill.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/examples.h"
#include "support/existing.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::price {
namespace {

using study::Protective;

const Book& our_book() {
    static const Book loaded = support::demo_book(support::catalogue());
    return loaded;
}

study::RunScheme plain_scheme() {
    return support::scheme(support::cable(2, 10), Protective::armour, support::fuse(32));
}

Bill bill(const site::Job& job, const study::RunScheme& scheme,
          const std::vector<Item>& remedies = {}) {
    return bill_of(our_book(), support::prepared(job), scheme, {remedies, {}});
}

const BillLine* line_of(const Bill& bill, const std::string& item) {
    for (const BillLine& line : bill) {
        if (line.item == item) return &line;
    }
    return nullptr;
}

TEST(Bill, NamesEveryItemAsTheBookDoesAndSaysWhatItIsHere) {
    site::Job job = support::plain_job();  // 30 m buried direct
    job.runs[0].legs[0].surface = site::Surface::lawn;
    const Bill all = bill(job, plain_scheme());
    const BillLine* cable = line_of(all, "cable 2x10");
    ASSERT_TRUE(cable);
    EXPECT_EQ(cable->part, Part::run);
    EXPECT_EQ(cable->sort, Sort::material);
    EXPECT_EQ(cable->unit, "m");
    EXPECT_NEAR(cable->quantity, (30 + 2 * 1.5) * 1.04, 1e-9);
    EXPECT_EQ(cable->each, pounds(5.60));
    EXPECT_EQ(cable->amount, pounds(192.19));
    EXPECT_NE(cable->says.find("2 × 10 mm²"), std::string::npos) << cable->says;
    const BillLine* fuse = line_of(all, "fuse 32");
    ASSERT_TRUE(fuse);
    EXPECT_EQ(fuse->part, Part::house_end);
    EXPECT_NE(fuse->says.find("32 A BS 88-3 fuse"), std::string::npos) << fuse->says;
    const BillLine* trench = line_of(all, "trench lawn");
    ASSERT_TRUE(trench);
    EXPECT_EQ(trench->number, 1);
    EXPECT_EQ(trench->quantity, 30);
    EXPECT_EQ(trench->sort, Sort::service);
    EXPECT_FALSE(line_of(all, "duct"));
    EXPECT_FALSE(line_of(all, "rod"));
}

TEST(Bill, ABreakerAbove40AIsTwoLinesOfTheBook) {
    study::RunScheme s = plain_scheme();
    s.device = &support::breaker("B", 50);
    s.fed_from = site::FedFrom::spare_way;
    const Bill all = bill(support::plain_job(), s);
    ASSERT_TRUE(line_of(all, "breaker B 6 kA"));
    EXPECT_NE(line_of(all, "breaker B 6 kA")->says.find("50 A"), std::string::npos);
    ASSERT_TRUE(line_of(all, "breaker over 40 A extra"));
    s.phases = 3;
    const Bill three = bill(support::on_three_phases(support::plain_job()), s);
    EXPECT_EQ(line_of(three, "breaker B 6 kA")->quantity, our_book().amount(Item::poles_factor));
    EXPECT_EQ(line_of(three, "breaker over 40 A extra")->quantity,
              our_book().amount(Item::poles_factor));
}

TEST(Bill, WhatIsPutRightFirstIsNamed) {
    const Bill all = bill(support::plain_job(), plain_scheme(), {Item::house_bonding_upgrade});
    const BillLine* line = line_of(all, "house bonding upgrade");
    ASSERT_TRUE(line);
    EXPECT_EQ(line->part, Part::remedies);
    EXPECT_EQ(line->amount, pounds(145));
}

TEST(Bill, ACableThatStaysIsNotOnIt) {
    const site::Job job = support::with_cable_there(support::plain_job(), support::cable(2, 10));
    study::RunScheme s = plain_scheme();
    s.first().laid = study::Laid::kept;
    s.head_stays = true;
    const Bill all = bill(job, s);
    EXPECT_FALSE(line_of(all, "cable 2x10"));
    EXPECT_FALSE(line_of(all, "fuse 32"));
    EXPECT_TRUE(line_of(all, "test of an existing cable"));
}

TEST(Bill, HoursByTaskAreTheLabourOfTheBill) {
    const Bill all = bill(support::plain_job(), plain_scheme());
    const auto tasks = hours_by_task(all);
    double hours = 0;
    double amount = 0;
    double labour = 0;
    for (const TaskHours& task : tasks) {
        hours += task.hours;
        amount += task.amount.number();
    }
    for (const BillLine& line : all) {
        if (line.sort == Sort::labour) labour += line.amount.number();
    }
    EXPECT_NEAR(hours, 2 + 1.6 + 30 * 0.07 + 2.5, 1e-9);  // house, glands, laying, board
    EXPECT_EQ(tasks.size(), 4u);
    EXPECT_NEAR(amount, labour, 1e-9);
    EXPECT_NEAR(amount, hours * 46, 0.005 * 4);
}

TEST(Bill, EveryPartHasItsWord) {
    std::vector<std::string> words;
    for (int i = 0; i < parts; ++i) words.emplace_back(part_word(static_cast<Part>(i)));
    EXPECT_EQ(words[0], "house end");
    EXPECT_EQ(words[4], "test and paper");
    std::sort(words.begin(), words.end());
    EXPECT_EQ(std::unique(words.begin(), words.end()), words.end());
}

bool whole_pennies(Pounds amount) {
    const double pennies = amount.number() * 100;
    return std::fabs(pennies - std::round(pennies)) < 1e-6;
}

RC_GTEST_PROP(Bill, ItsLinesAddUpToThePriceExactly, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    study::RunScheme scheme = support::scheme_of(drawn);
    if (scheme.first().separate) scheme.first().separate = &support::conductor(10);
    const auto setting = support::prepared(job);
    const Extras extras{{Item::house_bonding_upgrade}, {}};
    const Bill all = bill_of(our_book(), setting, scheme, extras);
    Silent silent;
    const auto price = price_of(silent, our_book(), setting, scheme, extras);
    const auto summed = price_of_bill(all, our_book());
    RC_ASSERT(summed.house_end == price.house_end);
    RC_ASSERT(summed.run == price.run);
    RC_ASSERT(summed.ground == price.ground);
    RC_ASSERT(summed.far_end == price.far_end);
    RC_ASSERT(summed.test_and_paper == price.test_and_paper);
    RC_ASSERT(summed.remedies == price.remedies);
    RC_ASSERT(summed.net == price.net);
    RC_ASSERT(summed.vat == price.vat);
    RC_ASSERT(summed.total == price.total);
    for (const BillLine& line : all) {
        RC_ASSERT(whole_pennies(line.amount));
        RC_ASSERT(line.quantity > 0);
        RC_ASSERT(std::fabs(line.quantity * line.each.number() - line.amount.number()) < 0.00501);
        RC_ASSERT(!line.item.empty() && !line.says.empty() && !line.unit.empty());
    }
    RC_ASSERT(whole_pennies(price.vat));
}

RC_GTEST_PROP(Bill, RaisingAnyOnePriceNeverLowersASchemesPrice, ()) {
    const support::Drawn drawn = *support::any_drawn();
    study::RunScheme scheme = support::scheme_of(drawn);
    if (scheme.first().separate) scheme.first().separate = &support::conductor(10);
    const site::Job job = support::job_of(drawn);
    const auto setting = support::prepared(job);
    Silent silent;
    const Extras extras{{Item::house_bonding_upgrade}, {}};
    const Pounds before = price_of(silent, our_book(), setting, scheme, extras).total;
    const double more = support::number_between(0.001, 5);
    Book dearer = our_book();
    const auto item = *rc::gen::inRange<std::size_t>(0, item_count);
    dearer.amounts[item] += more;
    RC_ASSERT(price_of(silent, dearer, setting, scheme, extras).total >= before);
    for (PoundsPerMetre& price : dearer.cables) price = price + pounds_per_metre(more + 1);
    for (Pounds& price : dearer.devices) price = price + pounds(more + 1);
    RC_ASSERT(price_of(silent, dearer, setting, scheme, extras).total > before);
}

}  // namespace
}  // namespace toft::price
