#pragma once
// How any number of layers mirror and pass on the field of a point, for one wave number: the exact
// kernels of the integral over Bessel's J0. Page: docs/methods/field.md.
//
// Source at depth c in layer i, place at depth z in layer j >= i, r apart along the surface; t and
// b are top and bottom of a layer, R seen from within it, 1 above for the surface (no current
// leaves), 0 below for the deepest layer:
//
//   V = rho_i/(4 pi) integral of J0(l r) g(l) dl,
//   g = T { e^(-l (z-c)) + R_above,i e^(-l (z+c-2 t_i)) + R_below,j e^(-l (2 b_j-z-c))
//           + R_above,i R_below,j e^(-l (2 b_j-2 t_i-z+c)) }
//   T = 1/(1 - R_above R_below e^(-2 l d_i)) times, for each boundary on the way down,
//       (1 + K)/(1 + K R_below e^(-2 l d)) of the layer below it
//
// and for i = j, where T = 1/(1 - …), the first term is e^(-l |z-c|) without T and the last one
// counts for both signs of z - c. Potential and current are continuous at each boundary.

#include "field/soil.h"

#include <vector>

namespace toft::field {

/// Factors of the four exponentials of one pair of layers. Within one layer `through` is T and not
/// used.
struct LayerReflection {
    double through = 0;
    double above = 0;
    double below = 0;
    double both = 0;
};

/// Number of the pair of layers i <= j among `count` layers: (0,0) (0,1) … (1,1) …
inline std::size_t pair_number(std::size_t i, std::size_t j, std::size_t count) {
    return i * count - i * (i + 1) / 2 + j;
}

/// All pairs in the order of pair_number() at the wave number `per_metre`, from 0 to infinity.
std::vector<LayerReflection> reflections(const Strata& soil, double per_metre);

}  // namespace toft::field
