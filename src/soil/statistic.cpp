#include "soil/statistic.h"

#include <cmath>

namespace toft::soil {

namespace {

/// The continued fraction of the incomplete beta function, by Lentz's way.
double beta_fraction(double a, double b, double x) {
    constexpr double tiny = 1e-300;
    double c = 1;
    double d = 1 - (a + b) * x / (a + 1);
    d = 1 / (std::fabs(d) < tiny ? tiny : d);
    double fraction = d;
    for (int m = 1; m < 500; ++m) {
        double change = 1;
        for (int half = 0; half < 2; ++half) {
            const double part = half == 0
                                    ? m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
                                    : -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 + part * d;
            d = 1 / (std::fabs(d) < tiny ? tiny : d);
            c = 1 + part / c;
            c = std::fabs(c) < tiny ? tiny : c;
            change = c * d;
            fraction *= change;
        }
        if (std::fabs(change - 1) < 1e-14) break;
    }
    return fraction;
}

/// ln of Gamma(half/2) for a whole number of halves.
double log_gamma_of_halves(int half) {
    double sum = half % 2 == 0 ? 0 : 0.5 * std::log(3.14159265358979324);
    for (double x = half / 2.0 - 1; x > 0; x -= 1) sum += std::log(x);
    return sum;
}

double incomplete_beta(int a_halves, int b_halves, double x) {
    const double a = a_halves / 2.0;
    const double b = b_halves / 2.0;
    const double front =
        std::exp(log_gamma_of_halves(a_halves + b_halves) - log_gamma_of_halves(a_halves) -
                 log_gamma_of_halves(b_halves) + a * std::log(x) + b * std::log1p(-x));
    if (x < (a + 1) / (a + b + 2)) return front * beta_fraction(a, b, x) / a;
    return 1 - front * beta_fraction(b, a, 1 - x) / b;
}

double f_tail(int above, int below, double f) {
    return incomplete_beta(below, above, below / (below + above * f));
}

double chi_tail(int degrees, double x) {
    if (degrees == 1) return std::erfc(std::sqrt(x / 2));
    double term = 1;
    double sum = 1;
    for (int i = 1; i < degrees / 2; ++i) sum += term *= x / 2 / i;
    return std::exp(-x / 2) * sum;
}

/// Where a falling tail comes down to `risk`, on a scale of logarithms.
template <class Tail>
double where(double risk, const Tail& tail) {
    double low = -20;
    double high = 40;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (tail(std::exp(middle)) > risk ? low : high) = middle;
    }
    return std::exp(high);
}

}  // namespace

double f_limit(int above, int below, double risk) {
    return where(risk, [&](double f) { return f_tail(above, below, f); });
}

double f_limit_of_known_noise(int above, double risk) {
    return where(risk, [&](double f) { return chi_tail(above, above * f); });
}

}  // namespace toft::soil
