#include "field/season.h"

#include <cmath>

namespace toft::field {

namespace {

constexpr Metres sliver = metres(1e-6);

}  // namespace

Outcome<Strata> with_crust(const Strata& soil, const Crust& crust) {
    Faults faults = faults_of(soil);
    if (!(crust.depth >= metres(0)) || !std::isfinite(crust.depth.number())) {
        faults.push_back({"crust", "/depth", "the crust needs a depth of 0 or more", "", {}});
    }
    if (!(crust.factor >= 1) || !std::isfinite(crust.factor)) {
        faults.push_back(
            {"crust", "/factor", "a crust multiplies resistivity by 1 or more", "", {}});
    }
    if (!faults.empty()) return failed(std::move(faults));
    Strata covered{{}, soil.deepest};
    Metres left = crust.depth;
    for (const Stratum& layer : soil.layers) {
        // Ends that differ by rounding alone are one.
        const bool whole = left > layer.thickness - sliver;
        const Metres within = whole ? layer.thickness : left;
        const Metres under = layer.thickness - within;
        if (within > metres(0)) {
            covered.layers.push_back({layer.resistivity * crust.factor, within});
        }
        if (under > metres(0)) covered.layers.push_back({layer.resistivity, under});
        left = most(left - within, metres(0));
        if (left < sliver) left = metres(0);
    }
    if (left > metres(0)) covered.layers.push_back({soil.deepest * crust.factor, left});
    covered = merged(covered);
    faults = faults_of(covered);
    if (!faults.empty()) return failed(std::move(faults));
    return covered;
}

}  // namespace toft::field
