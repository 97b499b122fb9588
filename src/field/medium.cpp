#include "field/medium.h"

namespace toft::field {

namespace {

constexpr double exact_series = 1e-6;

}  // namespace

double Medium::between(const Bar& a, const Bar& b) const {
    if (const auto* two = std::get_if<Ground>(&images_)) return two->between(a, b);
    if (const auto* more = std::get_if<StrataGround>(&images_)) return more->between(a, b);
    return 0;
}

double Medium::error() const {
    const auto* more = std::get_if<StrataGround>(&images_);
    return more ? more->error() : exact_series;
}

Outcome<Medium> medium_of(const LayeredSoil& soil) {
    if (Faults faults = faults_of(strata(soil)); !faults.empty()) return failed(std::move(faults));
    return Medium(strata(soil), Ground(soil));
}

Outcome<Medium> medium_of(const Strata& soil) {
    if (Faults faults = faults_of(soil); !faults.empty()) return failed(std::move(faults));
    Strata fewest = merged(soil);
    if (fewest.layers.empty()) return Medium(std::move(fewest), Ground(uniform_soil(soil.deepest)));
    if (fewest.layers.size() == 1) {
        const Stratum upper = fewest.layers.front();
        return Medium(std::move(fewest),
                      Ground({upper.resistivity, soil.deepest, upper.thickness}));
    }
    StrataGround ground(fewest);
    return Medium(std::move(fewest), std::move(ground));
}

}  // namespace toft::field
