#pragma once
// What four pins on the surface read over any number of horizontal layers.
//
//   rho_a = integral over lambda of T(lambda) (J0(lambda near) - J0(lambda far))
//           / (1/near - 1/far)
//
// T is the surface's resistivity transform by recursion from the deepest layer up (Koefoed;
// memory). The path of integration is turned by an eighth of a circle, where everything dies away
// and a trapezoidal rule over ln(lambda) suffices. Relative error below 1e-7 for layers up to 10
// 000 times apart, against image series summed term by term (tests/soil/layered_sounding_test.cpp).
// Pins are points on the surface; their depth is not read.
// Page: docs/methods/layered-sounding.md.

#include "base/outcome.h"
#include "field/soil.h"
#include "soil/spacing_reading.h"

#include <vector>

namespace toft::soil {

/// ln of resistivities from the surface down, then of thicknesses: 2 N - 1 figures for N layers.
using LogSoil = std::vector<double>;

LogSoil log_soil(const field::Strata& soil);
field::Strata strata_of(const LogSoil& soil);

/// What is seen over a soil: ln of each reading, and by how much it grows with each figure of the
/// soil (readings of the first figure, readings of the second, …).
struct Sight {
    std::vector<double> seen;
    std::vector<double> slopes;
};

/// Spreads prepared for many soils. The spreads have no faults.
class Sounding {
public:
    explicit Sounding(const std::vector<Spread>& spreads);

    /// ln of apparent resistivities in ohm metres.
    Sight look(const LogSoil& soil) const;

private:
    std::size_t readings_;
    std::vector<double> waves_;    ///< |lambda| along the path
    std::vector<double> weights_;  ///< readings by real and then imaginary parts of T
};

/// The apparent resistivity that each spread reads. Refuses faulty spreads, and layers without
/// resistivity or thickness or more than 10 000 times apart (`soil`).
Outcome<std::vector<OhmMetres>> apparent_over(const field::Strata& soil,
                                              const std::vector<Spread>& spreads);

}  // namespace toft::soil
