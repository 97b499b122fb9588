#include "price/listing.h"

#include "base/csv.h"
#include "base/text.h"

#include <fmt/format.h>

#include <cmath>
#include <set>

namespace toft::price {

namespace {

std::vector<BookRow> rows_of(const tables::Catalogue& catalogue) {
    std::vector<BookRow> rows;
    std::set<std::string> seen;
    const auto add = [&](const BookRow& row) {
        if (seen.insert(row_item(catalogue, row)).second) rows.push_back(row);
    };
    for (std::size_t i = 0; i < catalogue.cables.size(); ++i) add(BookRow::cable(i));
    for (std::size_t i = 0; i < catalogue.separates.size(); ++i) add(BookRow::separate(i));
    for (std::size_t i = 0; i < catalogue.devices.size(); ++i) add(BookRow::device(i));
    for (std::size_t i = 0; i < item_count; ++i) add(BookRow::item(static_cast<Item>(i)));
    return rows;
}

const char* use_of(const BookRow& row) {
    switch (row.of) {
        case BookRow::Of::cable:
            return "cable of the run and of circuits";
        case BookRow::Of::separate:
            return "protective conductor beside the cable, and bonds";
        case BookRow::Of::device:
            return "at the head of the run, one pole";
        case BookRow::Of::item:
            break;
    }
    return facts_of(static_cast<Item>(row.index)).use;
}

std::string sum(double amount) { return fixed(amount, 2); }

}  // namespace

std::vector<ListedRow> listed(const Book& book, const tables::Catalogue& catalogue) {
    std::vector<ListedRow> list;
    for (const BookRow& row : rows_of(catalogue)) {
        const double net = book.price(row);
        const bool priced = !std::isnan(net);
        ListedRow one{row_item(catalogue, row), row_unit(row), priced, 0, 0, 0, use_of(row)};
        if (priced) {
            one.low = book.low.price(row);
            one.net = net;
            one.high = book.high.price(row);
        }
        list.push_back(std::move(one));
    }
    return list;
}

std::string book_to_begin_with(const std::vector<ListedRow>& rows) {
    std::string text = "item,unit,net_gbp,low_gbp,high_gbp,note\n";
    for (const ListedRow& row : rows) {
        if (!row.priced) continue;
        const bool range = row.low != row.net || row.high != row.net;
        text += fmt::format("{},{},{},{},{},{}\n", csv_cell(row.item), row.unit, sum(row.net),
                            range ? sum(row.low) : "", range ? sum(row.high) : "",
                            csv_cell("invented, replace; " + row.use));
    }
    return text;
}

std::vector<FarRow> far_from(const Book& book, const Book& other,
                             const tables::Catalogue& catalogue) {
    std::vector<FarRow> far;
    for (const BookRow& row : rows_of(catalogue)) {
        const double here = book.price(row);
        const double there = other.price(row);
        const bool margin = row.of == BookRow::Of::item &&
                            row.index == static_cast<std::size_t>(Item::margin_percent);
        if (margin || std::isnan(here) || std::isnan(there)) continue;
        if (here >= there / 2 && here <= there * 2) continue;
        far.push_back({row_item(catalogue, row), row_unit(row), here, there});
    }
    return far;
}

}  // namespace toft::price
