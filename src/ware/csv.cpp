#include "ware/csv.h"

#include "base/csv.h"
#include "base/text.h"

#include <cmath>

namespace toft::ware {

namespace {

constexpr const char* line_end = "\r\n";

std::string cell(const std::string& text) { return csv_cell(guarded(text)); }

std::string money(const std::optional<Pounds>& amount) {
    return amount ? fixed(amount->number(), 2) : std::string();
}

/// Up to three decimals, none of them a trailing nought.
std::string figure(double value) {
    std::string text = fixed(value, 3);
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

}  // namespace

std::vector<std::string> columns_of(Prices prices) {
    std::vector<std::string> names{"group", "what", "size", "quantity", "unit", "order", "note"};
    if (prices == Prices::with) {
        names.push_back("price each, GBP without tax");
        names.push_back("amount, GBP without tax");
    }
    return names;
}

std::string guarded(const std::string& text) {
    const bool formula =
        !text.empty() && std::string("=+-@\t\r").find(text[0]) != std::string::npos;
    return formula ? "'" + text : text;
}

double shown_quantity(const Row& row) { return std::round(row.quantity * 1000) / 1000; }

std::string csv_of(const List& list, Prices prices) {
    std::string text;
    for (const std::string& name : columns_of(prices))
        text += (text.empty() ? "" : ",") + cell(name);
    text += line_end;
    for (const Row& row : list.rows) {
        text += cell(group_word(row.group)) + ',' + cell(row.what) + ',' + cell(row.size) + ',' +
                figure(shown_quantity(row)) + ',' + cell(row.unit) + ',' + cell(row.order) + ',' +
                cell(row.note);
        if (prices == Prices::with) text += ',' + money(row.each) + ',' + money(row.amount);
        text += line_end;
    }
    return text;
}

}  // namespace toft::ware
