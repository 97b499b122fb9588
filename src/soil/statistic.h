#pragma once
// Quantiles that say how much a misfit may grow before a soil is out of the question.

namespace toft::soil {

/// The figure that Fisher's F with `above` and `below` degrees of freedom exceeds with the
/// probability `risk`; 1 <= above, below, 1e-6 <= risk <= 0.5. Relative error below 1e-6
/// (incomplete beta function as a continued fraction; Abramowitz and Stegun, 26.5.8 and 26.6.2).
double f_limit(int above, int below, double risk);

/// The same where the noise is known: chi-squared over its degrees of freedom, 1 or an even number.
double f_limit_of_known_noise(int above, double risk);

}  // namespace toft::soil
