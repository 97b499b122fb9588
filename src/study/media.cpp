#include "study/media.h"

#include <algorithm>

namespace toft::study {

bool same_soil(const field::Strata& a, const field::Strata& b) {
    return a.deepest == b.deepest &&
           std::equal(a.layers.begin(), a.layers.end(), b.layers.begin(), b.layers.end(),
                      [](const field::Stratum& x, const field::Stratum& y) {
                          return x.resistivity == y.resistivity && x.thickness == y.thickness;
                      });
}

const field::Medium* Media::in(const field::Strata& soil) {
    for (const auto& [known, medium] : ready_) {
        if (same_soil(known, soil)) return &medium;
    }
    auto medium = field::medium_of(soil);
    if (!medium) return nullptr;
    ready_.emplace_back(soil, std::move(*medium));
    return &ready_.back().second;
}

}  // namespace toft::study
