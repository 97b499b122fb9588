#include "tables/sheet.h"

#include "base/order.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace toft::tables {

namespace {

bool basis_from(std::string_view word, Basis& basis) {
    for (Basis b : {Basis::published, Basis::derived, Basis::common_practice, Basis::memory}) {
        if (word == basis_word(b)) {
            basis = b;
            return true;
        }
    }
    return false;
}

std::string_view find_text(EmbeddedFiles files, std::string_view name) {
    for (std::size_t i = 0; i < files.count; ++i) {
        if (files.first[i].name == name) return files.first[i].text;
    }
    return {};
}

}  // namespace

Sheet::Sheet(EmbeddedFiles files, std::string_view name, std::deque<Citation>& citations,
             Faults& faults)
    : name_(name), citations_(citations), faults_(faults) {
    auto parsed = parse_csv(name, find_text(files, name));
    if (!parsed) {
        faults_.insert(faults_.end(), parsed.error().begin(), parsed.error().end());
        return;
    }
    table_ = std::move(*parsed);
    made_.resize(table_.rows.size(), nullptr);
}

std::string Sheet::word(std::size_t row, std::string_view column) {
    for (std::size_t i = 0; i < table_.header.size(); ++i) {
        if (table_.header[i] == column) return table_.rows[row].cells[i];
    }
    fault(row, fmt::format("there is no column {}", column));
    return {};
}

double Sheet::number(std::size_t row, std::string_view column) {
    const std::string text = word(row, column);
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    if (text.empty() || *end != '\0' || !std::isfinite(value)) {
        fault(row, fmt::format("{} is not a number in column {}", text, column));
        return 0;
    }
    return value;
}

const Citation* Sheet::cite(std::size_t row) {
    if (made_[row]) return made_[row];
    Citation citation{word(row, "source"), word(row, "locator"), Basis::memory, word(row, "note")};
    if (!basis_from(word(row, "basis"), citation.basis))
        fault(row, "the basis is not a known word");
    citations_.push_back(std::move(citation));
    return made_[row] = &citations_.back();
}

void Sheet::fault(std::size_t row, std::string says) {
    faults_.push_back(
        {"data", fmt::format("{}:{}", name_, table_.rows[row].line), std::move(says), "", {}});
}

void sort_points(std::vector<TablePoint>& points) {
    put_in_order(points, [](const TablePoint& a, const TablePoint& b) { return a.x < b.x; });
}

}  // namespace toft::tables
