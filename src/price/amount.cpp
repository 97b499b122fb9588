#include "price/amount.h"

#include <cctype>
#include <cstdlib>

namespace toft::price {

namespace {

constexpr double most = 1e6;

bool has(const std::string& cell, const char* what) { return cell.find(what) != std::string::npos; }

bool plain_number(const std::string& cell) {
    int dots = 0;
    int digits = 0;
    for (const char c : cell) {
        if (c == '.') {
            ++dots;
        } else if (std::isdigit(static_cast<unsigned char>(c))) {
            ++digits;
        } else {
            return false;
        }
    }
    return dots <= 1 && digits > 0;
}

}  // namespace

std::string trimmed(const std::string& cell) {
    const char* blanks = " \t\r\n";
    const std::size_t from = cell.find_first_not_of(blanks);
    if (from == std::string::npos) return "";
    return cell.substr(from, cell.find_last_not_of(blanks) - from + 1);
}

Amount amount_of(const std::string& text) {
    const std::string cell = trimmed(text);
    if (cell.empty()) return {0, "nothing is written; write a sum, or take the row out"};
    if (has(cell, "£") || has(cell, "GBP")) {
        return {0, "write the bare number, such as 12.50: all sums are pounds"};
    }
    if (has(cell, ",")) return {0, "write 1250.00 without a comma, and pence after a dot"};
    if (cell.front() == '-') return {0, "a price is not below nothing"};
    if (!plain_number(cell)) return {0, "write a bare number, such as 12.50"};
    const double value = std::strtod(cell.c_str(), nullptr);
    if (value > most) return {0, "it is above a million"};
    return {value, nullptr};
}

}  // namespace toft::price
