// Lists of jobs as they are designed, against the bills of their schemes.

#include "base/csv.h"
#include "support/questions.h"
#include "ware/bills.h"
#include "ware/csv.h"
#include "ware/pence.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

struct Designed {
    site::Job job;
    answer::Answer answer;

    List list(std::size_t scheme = 0) const {
        return list_of(support::catalogue(), job, answer.schemes[scheme]);
    }
};

Designed designed(const std::string& name) {
    Designed d{support::example_job(name, support::catalogue()), {}};
    d.answer = answer::design(support::question_of(d.job));
    return d;
}

void add_bill(const price::Bill& bill, long long& amount, int& lines) {
    for (const price::BillLine& line : bill) {
        if (line.sort != price::Sort::material) continue;
        amount += pence(line.amount);
        ++lines;
    }
}

void expect_bills(const List& list, const answer::SchemeAnswer& scheme) {
    long long amount = 0;
    int lines = 0;
    add_bill(scheme.bill, amount, lines);
    for (const auto& part : scheme.further) add_bill(part.bill, amount, lines);
    EXPECT_GT(lines, 0);
    for (const Row& row : list.rows) {
        lines -= row.lines;
        EXPECT_FALSE(row.what.empty());
        EXPECT_GT(row.quantity, 0) << row.what;
    }
    EXPECT_EQ(lines, 0);
    EXPECT_EQ(pence(list.amount), amount);
}

TEST(Designs, EveryListComesToTheMaterialsOfItsBills) {
    for (const char* name : {"demo", "tt-shed", "garage-gym-stable", "three-phase-barn",
                             "overhead-stable", "old-garage-cable"}) {
        SCOPED_TRACE(name);
        const Designed d = designed(name);
        ASSERT_FALSE(d.answer.schemes.empty());
        for (std::size_t i = 0; i < d.answer.schemes.size(); ++i) {
            expect_bills(d.list(i), d.answer.schemes[i]);
        }
    }
}

void expect_kits(const Designed& d, std::size_t scheme) {
    const answer::SchemeAnswer& first = d.answer.schemes[scheme];
    int ends = 0;
    const auto count = [&](const answer::RunAnswer& run) {
        for (const auto& s : run.stretches) {
            if (s.armoured) ends += s.parallel * (!s.armour_near + !s.armour_far);
        }
    };
    count(first.run);
    for (const auto& part : first.further) count(part.run);
    double kits = 0;
    for (const Row& row : d.list(scheme).rows) {
        if (row.what.rfind("insulated gland", 0) == 0) kits += row.quantity;
    }
    EXPECT_GE(kits, ends) << first.key;
}

TEST(Designs, EveryInsulatedEndHasItsKit) {
    for (const char* name :
         {"demo", "tt-shed", "garage-gym-stable", "own-rod-greenhouse", "old-garage-cable"}) {
        SCOPED_TRACE(name);
        const Designed d = designed(name);
        for (std::size_t i = 0; i < d.answer.schemes.size(); ++i) expect_kits(d, i);
    }
}

/// What the price book calls it is no word of the counter.
TEST(Designs, NoRowOfTheExamplesGoesByItsNameInTheBook) {
    for (const char* name : {"demo", "garage-gym-stable", "three-phase-barn", "overhead-stable"}) {
        const Designed d = designed(name);
        std::vector<std::string> book;
        for (const price::BillLine& line : d.answer.schemes[0].bill) book.push_back(line.item);
        for (const Row& row : d.list().rows) {
            for (const std::string& item : book) EXPECT_NE(row.what, item) << name;
        }
    }
}

TEST(Designs, FortyCircuitsWithLongNamesLoseNothing) {
    Designed d{support::example_job("demo", support::catalogue()), {}};
    const std::string name(60, 'w');
    for (site::Building& building : d.job.buildings) {
        if (building.origin) continue;
        building.name = name;
        site::Circuit one;
        one.kind = site::CircuitKind::lighting;
        one.name = name;
        one.load_w = {true, 60, 60};
        one.length = {true, metres(8), metres(8)};
        building.circuits.assign(40, one);
    }
    d.answer = answer::design(support::question_of(d.job));
    ASSERT_FALSE(d.answer.schemes.empty());
    const List list = d.list();
    expect_bills(list, d.answer.schemes[0]);
    EXPECT_EQ(row_of(list, "RCBO").quantity, 40);
    const auto table = parse_csv("materials.csv", csv_of(list, Prices::with));
    ASSERT_TRUE(table.has_value());
    EXPECT_EQ(table->rows.size(), list.rows.size());
}

}  // namespace
}  // namespace toft::ware
