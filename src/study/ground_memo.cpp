#include "study/ground_memo.h"

#include <algorithm>

namespace toft::study {

namespace {

bool same(const std::vector<field::Strata>& a, const std::vector<field::Strata>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), same_soil);
}

bool same(const field::Spot& a, const field::Spot& b) {
    return a.east == b.east && a.north == b.north && a.depth == b.depth;
}

bool same(const std::vector<field::Wire>& a, const std::vector<field::Wire>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const field::Wire& x, const field::Wire& y) {
                          return same(x.from, y.from) && same(x.to, y.to) && x.radius == y.radius;
                      });
}

/// The same metal in the ground, however it came about.
bool same(const BuiltElectrode& a, const BuiltElectrode& b) {
    return a.concrete == b.concrete && a.concrete_share == b.concrete_share &&
           same(a.wires, b.wires);
}

bool same(const SoilSetting& a, const SoilSetting& b) {
    return a.whole_year == b.whole_year && a.read_dry == b.read_dry && same(a.worst, b.worst) &&
           same(a.best, b.best);
}

}  // namespace

ThroughTheYear kept_year(GroundMemo& memo, const tables::Catalogue& catalogue,
                         const SoilSetting& soil, const BuiltElectrode& electrode) {
    for (const KeptYear& kept : memo.years) {
        if (same(kept.soil, soil) && same(kept.electrode, electrode)) return kept.year;
    }
    memo.years.push_back(
        {soil, electrode, through_the_year(catalogue, soil, electrode, memo.media)});
    return memo.years.back().year;
}

}  // namespace toft::study
