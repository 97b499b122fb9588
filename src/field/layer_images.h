#pragma once
// Few images that stand for any number of layers. Every kernel F of layer_reflection.h is the sum
// of exponentials with exponents from twice the thinnest layer on; here it is fitted by some
// dozens:
//
//   F(l) = F(infinity) + sum of a_n e^(-l b_n),  b_n = 2 d e^(n step), d the thinnest layer
//
// which makes each of them an image at b_n. The first image (F(infinity), at 0) and the sum of all
// (F(0), the far field) are exact; the a_n between are least squares over all wave numbers.
//
// Error. Let e(l) be what the fit misses and |e|, |e'| its norms over ln l. Hankel's transform of
// order 0 keeps the norm over logarithms, so an image row at height w misses at most
// M/sqrt(r^2 + w^2) with
//   M = sqrt(2) max(max e, sqrt(|e| (|e'| + 0.37 |e|))).
// `error` is the sum of M over the four rows of the worst pair of layers: the potential of a point
// errs by no more than that share of rho_i/(4 pi distance), anywhere. e is measured at 25 places to
// each unit of ln l. Fits aim at 1e-7; tests: 2e-7 to layers 100 times apart, at 10 000 times apart
// the share grows with the contrast, as the potential itself does.

#include "field/soil.h"

#include <vector>

namespace toft::field {

struct LayerImage {
    double amount = 0;
    double away = 0;  ///< metres beyond the first image
};

/// The images for the four exponentials of one pair of layers, nearest first.
struct LayerImages {
    std::vector<LayerImage> through;
    std::vector<LayerImage> above;
    std::vector<LayerImage> below;
    std::vector<LayerImage> both;
};

struct ImageFit {
    std::vector<LayerImages> pairs;  ///< in the order of pair_number()
    double error = 0;
};

/// Fits all pairs of layers of soil that faults_of() finds nothing wrong with.
ImageFit fit_images(const Strata& soil);

}  // namespace toft::field
