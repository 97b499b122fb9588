#include "demand/allowance.h"

#include "base/order.h"
#include "base/text.h"

#include <fmt/format.h>


namespace toft::demand {

namespace {

template <class L>
ValueIn<L, Amperes> sum_of(const std::vector<ValueIn<L, Amperes>>& currents, std::size_t from) {
    auto sum = currents[from];
    for (std::size_t i = from + 1; i < currents.size(); ++i) sum = sum + currents[i];
    return sum;
}

template <class L>
ValueIn<L, Amperes> by_amount(L& ledger, const tables::Allowance& row,
                              const ValueIn<L, Amperes>& all, const char* of) {
    if (plain(all) <= row.first.value) return all;
    const auto first = ledger.table({"first", "counts whole", 0, "", "", of}, row.first);
    const auto share = ledger.table({"share", "share of the rest", 0, "", "", of}, row.rest);
    return first + share * (all - first);
}

template <class L>
ValueIn<L, Amperes> by_rank(L& ledger, const tables::Allowance& row,
                            const std::vector<ValueIn<L, Amperes>>& currents, const char* of) {
    const auto largest =
        ledger.table({"share.largest", "share of the largest", 0, "", "", of}, row.largest);
    auto sum = largest * currents[0];
    if (currents.size() > 1) {
        const auto second =
            ledger.table({"share.second", "share of the second", 0, "", "", of}, row.second);
        sum = sum + second * currents[1];
    }
    if (currents.size() > 2) {
        const auto rest =
            ledger.table({"share.rest", "share of the others", 0, "", "", of}, row.rest);
        sum = sum + rest * sum_of<L>(currents, 2);
    }
    return sum;
}

std::string percent(double share) { return significant(100 * share, 3) + " %"; }

}  // namespace

template <class L>
ValueIn<L, Amperes> allowed(L& ledger, const tables::Allowance& row,
                            std::vector<ValueIn<L, Amperes>> currents, const AllowedAt<L>& at) {
    put_in_order(currents, [](const auto& a, const auto& b) { return plain(b) < plain(a); });
    const char* of = row.cell.c_str();
    auto sum = row.first.value > amperes(0) ? by_amount<L>(ledger, row, sum_of<L>(currents, 0), of)
                                            : by_rank<L>(ledger, row, currents, of);
    if (at.no_less_than && plain(sum) < plain(*at.no_less_than)) {
        sum = most(sum, *at.no_less_than);
    }
    if (row.extra.value > amperes(0)) {
        const auto extra =
            ledger.table({"extra", "a socket in the control unit", 0, "", "", of}, row.extra);
        sum = sum + extra * static_cast<double>(currents.size());
    }
    return ledger.let({row.symbol.c_str(), "circuits of one load with their allowance", at.line, "",
                       "On-Site Guide Table A2", at.of},
                      sum);
}

std::string allowance_words(const tables::Allowance& row) {
    const double largest = row.largest.value;
    const double second = row.second.value;
    const double rest = row.rest.value;
    std::string words;
    if (row.first.value > amperes(0)) {
        words = fmt::format("{} A and {} of the rest", significant(row.first.value.number(), 3),
                            percent(rest));
    } else if (largest == rest && largest == second) {
        words = percent(rest);
    } else if (second == rest) {
        words =
            fmt::format("{} of the largest and {} of the others", percent(largest), percent(rest));
    } else {
        words = fmt::format("{} of the largest, {} of the second and {} of the others",
                            percent(largest), percent(second), percent(rest));
    }
    if (row.extra.value > amperes(0)) {
        words += fmt::format(", and {} A for a socket", significant(row.extra.value.number(), 3));
    }
    return words;
}

template Amperes allowed(Silent&, const tables::Allowance&, std::vector<Amperes>,
                         const AllowedAt<Silent>&);
template Traced<Amperes> allowed(Recording&, const tables::Allowance&, std::vector<Traced<Amperes>>,
                                 const AllowedAt<Recording>&);

}  // namespace toft::demand
