#include "soil/kelvin.h"

#include "base/pi.h"

#include <cmath>

namespace toft::soil {

namespace {

constexpr double euler = 0.57721566490153286;
constexpr double series_to = 5;

/// K0(w) = -(ln(w/2) + euler) I0(w) + sum of (w^2/4)^k/(k!)^2 (1 + 1/2 + … + 1/k).
Kelvin by_series(double x) {
    const double q = x * x / 4;
    double size = 1, harmonic = 0;
    double i_real = 1, i_imag = 0, s_real = 0, s_imag = 0;
    for (int k = 1; k < 60; ++k) {
        size *= q / (static_cast<double>(k) * k);
        if (size < 1e-18) break;
        harmonic += 1.0 / k;
        const double term = (k % 4 < 2) ? size : -size;  // i^k = 1, i, -1, -i
        (k % 2 == 0 ? i_real : i_imag) += term;
        (k % 2 == 0 ? s_real : s_imag) += term * harmonic;
    }
    const double log_real = -(std::log(x / 2) + euler);
    const double log_imag = -pi / 4;
    return {log_real * i_real - log_imag * i_imag + s_real,
            log_real * i_imag + log_imag * i_real + s_imag};
}

/// K0(w) is the integral of exp(-w cosh u) over u > 0; the trapezoidal rule converges at once.
Kelvin by_integral(double x) {
    constexpr double step = 0.125;
    const double real = x / std::sqrt(2.0);
    Kelvin sum;
    for (int i = 0; i < 200; ++i) {
        const double w = real * std::cosh(step * i);
        if (w > real + 45) break;
        const double size = (i == 0 ? 0.5 : 1) * step * std::exp(-w);
        sum.ker += size * std::cos(w);
        sum.kei -= size * std::sin(w);
    }
    return sum;
}

}  // namespace

Kelvin kelvin(double x) { return x < series_to ? by_series(x) : by_integral(x); }

}  // namespace toft::soil
