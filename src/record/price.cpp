#include "record/parts.h"

#include "base/text.h"
#include "parts/words.h"
#include "price/bill.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::paper {

namespace {

using page::Heading;
using page::Side;
using page::Table;
using page::Words;

std::string line_words(const price::BillLine& line) {
    return line.number > 0 ? fmt::format("{} ({})", line.says, line.number) : line.says;
}

Table bill_table(const price::Bill& bill) {
    Table table{{{"What", 6},
                 {"Item of the book", 4},
                 {"Quantity", 2, Side::right},
                 {"", 1},
                 {"Each", 2, Side::right},
                 {"Amount", 2.2, Side::right}},
                {},
                false,
                true};
    for (int part = 0; part < price::parts; ++part) {
        double sum = 0;
        bool named = false;
        for (const price::BillLine& line : bill) {
            if (static_cast<int>(line.part) != part) continue;
            if (!named) table.rows.push_back({{parts::capital(price::part_word(line.part))}, true});
            named = true;
            sum += line.amount.number();
            table.rows.push_back(
                {{line_words(line), line.item, significant(line.quantity, 5), line.unit,
                  pence_words(line.each.number()), pence_words(line.amount.number())}});
        }
        if (named) table.rows.push_back({{"", "", "", "", "", pence_words(sum)}, true});
    }
    return table;
}

Table labour_table(const price::Bill& bill) {
    Table table{{{"Labour by task", 6}, {"Hours", 2, Side::right}, {"Amount", 2, Side::right}},
                {},
                false,
                true};
    for (const price::TaskHours& task : price::hours_by_task(bill)) {
        table.rows.push_back(
            {{task.task, fixed(task.hours, 2), pence_words(task.amount.number())}});
    }
    return table;
}

/// Empty where the book gives no range.
std::string range_words(const answer::PriceAnswer& p) {
    if (std::round(100 * p.total_low) == std::round(100 * p.total_high)) return "";
    return fmt::format(" With every price of the book at its lowest or its highest: {} to {}.",
                       pence_words(p.total_low), pence_words(p.total_high));
}

}  // namespace

Blocks record_of_price(const Subject& s) {
    const answer::PriceAnswer& p = s.answer.schemes[s.scheme].price;
    Blocks blocks{
        Heading{"What it costs"},
        Words{fmt::format("{} before tax, VAT {}, {} in all, by {}.{}", pence_words(p.net),
                          pence_words(p.vat), pence_words(p.total), p.basis, range_words(p))}};
    for (const answer::SchemeAnswer* part : runs_of(s)) {
        blocks.push_back(Heading{"Bill of run " + part->run.id});
        blocks.push_back(bill_table(part->bill));
        Table labour = labour_table(part->bill);
        if (!labour.rows.empty()) blocks.push_back(std::move(labour));
    }
    return blocks;
}

}  // namespace toft::paper
