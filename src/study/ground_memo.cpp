#include "study/ground_memo.h"

#include <algorithm>

namespace toft::study {

namespace {

bool same(const std::vector<field::Strata>& a, const std::vector<field::Strata>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same_soil);
}

bool same(const SoilSetting& a, const SoilSetting& b) {
    return a.whole_year == b.whole_year && a.read_dry == b.read_dry && same(a.worst, b.worst) &&
           same(a.best, b.best);
}

}  // namespace

ThroughTheYear kept_year(GroundMemo& memo, const tables::Catalogue& catalogue,
                         const SoilSetting& soil, const BuiltElectrode& electrode) {
    for (const auto& [known, year] : memo.years) {
        if (same(known, soil)) return year;
    }
    memo.years.emplace_back(soil, through_the_year(catalogue, soil, electrode, memo.media));
    return memo.years.back().second;
}

}  // namespace toft::study
