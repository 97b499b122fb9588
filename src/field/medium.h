#pragma once
// Soil made ready for fields: its images are worked out once and serve any number of electrodes.
// Uniform soil and two layers keep Maxwell's series, exact (ground.h); more layers have fitted
// images with a checked error (strata_ground.h).

#include "field/ground.h"
#include "field/strata_ground.h"

#include <variant>

namespace toft::field {

class Medium {
public:
    /// Ohms: mean volts on `a` for one ampere out of `b`. Each bar lies wholly in one layer.
    double between(const Bar& a, const Bar& b) const;

    /// The layers that wires are cut by.
    const Strata& soil() const { return soil_; }
    /// Largest error of the potential of a point, as share of rho/(4 pi distance); see
    /// layer_images.h. Of the exact series 1e-6.
    double error() const;

private:
    friend Outcome<Medium> medium_of(const Strata& soil);
    friend Outcome<Medium> medium_of(const LayeredSoil& soil);
    template <class Images>
    Medium(Strata soil, Images images) : soil_(std::move(soil)), images_(std::move(images)) {}

    Strata soil_;
    std::variant<Ground, StrataGround> images_;
};

/// Refuses what faults_of() complains of.
Outcome<Medium> medium_of(const Strata& soil);
Outcome<Medium> medium_of(const LayeredSoil& soil);

}  // namespace toft::field
