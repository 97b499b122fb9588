#include "trench/duct.h"

#include "base/limit.h"
#include "base/text.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::trench {

namespace {

std::string per_cent(double share) { return fixed(100 * share, 0) + " %"; }

std::string names(const std::vector<Metres>& cables) {
    std::string words;
    for (const Metres& d : cables) words += (words.empty() ? "" : " and ") + mm_words(d);
    return words;
}

}  // namespace

std::string mm_words(Metres length) { return significant(1000 * length.number(), 3) + " mm"; }

double duct_fill(Metres bore, const std::vector<Metres>& cables) {
    double sum = 0;
    for (const Metres& d : cables) sum += squared(d).number();
    return sum / squared(bore).number();
}

DuctChoice duct_for(const tables::Catalogue& catalogue, const std::vector<Metres>& cables) {
    DuctChoice choice;
    const auto thickest = std::max_element(cables.begin(), cables.end());
    const auto thinnest = std::min_element(cables.begin(), cables.end());
    if (cables.empty() || !(*thinnest > metres(0))) {
        choice.why = "diameter not in the tables: choose by the cable in hand";
        return choice;
    }
    const tables::Ware& ware = catalogue.ware;
    const double thicker = 1 + ware.diameter_spread.value;
    for (const tables::DuctRow& duct : ware.ducts) {
        const double fill = duct_fill(duct.bore, cables);
        const double most = fill * thicker * thicker;
        const double ratio = duct.bore / *thickest / thicker;
        if (!within(most, ware.duct_fill.value) || !within(ware.duct_ratio.value, ratio)) continue;
        choice.row = &duct;
        choice.fill = fill;
        choice.fill_most = most;
        choice.why = fmt::format(
            "{} in a bore of {}: {} full, {} where a maker's cable is thicker, at most {}",
            names(cables), mm_words(duct.bore), per_cent(fill), per_cent(most),
            per_cent(ware.duct_fill.value));
        return choice;
    }
    choice.why = fmt::format("no duct of the tables is wide enough for {}", names(cables));
    return choice;
}

}  // namespace toft::trench
