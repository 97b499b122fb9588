#include "study/ground_memo.h"

#include <algorithm>

namespace toft::study {

namespace {

bool same(const field::Strata& a, const field::Strata& b) {
    return a.deepest == b.deepest &&
           std::equal(a.layers.begin(), a.layers.end(), b.layers.begin(), b.layers.end(),
                      [](const field::Stratum& x, const field::Stratum& y) {
                          return x.resistivity == y.resistivity && x.thickness == y.thickness;
                      });
}

bool same(const std::vector<field::Strata>& a, const std::vector<field::Strata>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const field::Strata& x, const field::Strata& y) { return same(x, y); });
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
    memo.years.emplace_back(soil, through_the_year(catalogue, soil, electrode));
    return memo.years.back().second;
}

}  // namespace toft::study
