#include "soil/layered_sounding.h"

#include "base/pi.h"
#include "soil/kelvin.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <complex>

namespace toft::soil {

namespace {

using Complex = std::complex<double>;

/// The rule's step in ln(lambda), and its ends as |lambda| times the widest and closest distance.
constexpr double abscissa_step = 0.2;
constexpr double least_wave = 1e-10;
constexpr double most_wave = 45;

Complex inverse(const Complex& z) { return std::conj(z) / std::norm(z); }

/// The resistivity transform at one lambda, and its slopes by ln of each figure of the soil.
class Transform {
public:
    explicit Transform(const LogSoil& soil) : layers_((soil.size() + 1) / 2) {
        for (double figure : soil) soil_.push_back(std::exp(figure));
        slopes_.resize(soil.size());
    }

    double upper() const { return soil_[0]; }
    const std::vector<Complex>& slopes() const { return slopes_; }

    Complex at(double wave) {
        const Complex lambda = wave * Complex(std::sqrt(0.5), std::sqrt(0.5));
        Complex t = soil_[layers_ - 1];
        slopes_[layers_ - 1] = t;
        for (std::size_t i = layers_ - 1; i-- > 0;) t = rise_through(i, lambda, t);
        return t;
    }

private:
    Complex rise_through(std::size_t i, const Complex& lambda, const Complex& below) {
        const double rho = soil_[i];
        const double h = soil_[layers_ + i];
        const Complex e = std::exp(-2 * h * lambda);
        const Complex sum = inverse(below + rho);
        const Complex k = (below - rho) * sum;
        const Complex under = inverse(1.0 - k * e);
        const Complex t = rho * (1.0 + k * e) * under;
        const Complex by_k = 2 * rho * e * under * under;
        const Complex by_below = by_k * 2.0 * rho * sum * sum;
        for (std::size_t j = i + 1; j < layers_; ++j) slopes_[j] *= by_below;
        for (std::size_t j = i + 1; j + 1 < layers_; ++j) slopes_[layers_ + j] *= by_below;
        slopes_[i] = t - by_below * below;  // T grows as all its resistivities together
        slopes_[layers_ + i] = -2.0 * rho * k * under * under * 2.0 * h * lambda * e;
        return t;
    }

    std::size_t layers_;
    std::vector<double> soil_;
    std::vector<Complex> slopes_;
};

/// H0(lambda r) on the path, apart from its factor 2/(i pi): the conjugate of ker + i kei.
Complex hankel(double wave, Metres r) {
    const Kelvin k = kelvin(wave * r.number());
    return {k.ker, -k.kei};
}

Eigen::Index index(std::size_t i) { return static_cast<Eigen::Index>(i); }

}  // namespace

LogSoil log_soil(const field::Strata& soil) {
    LogSoil figures;
    for (const field::Stratum& layer : soil.layers) {
        figures.push_back(std::log(layer.resistivity.number()));
    }
    figures.push_back(std::log(soil.deepest.number()));
    for (const field::Stratum& layer : soil.layers) {
        figures.push_back(std::log(layer.thickness.number()));
    }
    return figures;
}

field::Strata strata_of(const LogSoil& soil) {
    const std::size_t layers = (soil.size() + 1) / 2;
    field::Strata strata;
    for (std::size_t i = 0; i + 1 < layers; ++i) {
        strata.layers.push_back(
            {ohm_metres(std::exp(soil[i])), metres(std::exp(soil[layers + i]))});
    }
    strata.deepest = ohm_metres(std::exp(soil[layers - 1]));
    return strata;
}

Sounding::Sounding(const std::vector<Spread>& spreads) : readings_(spreads.size()) {
    if (spreads.empty()) return;
    double closest = pin_distances(spreads[0]).near.number();
    double widest = 0;
    for (const Spread& spread : spreads) {
        closest = std::min(closest, pin_distances(spread).near.number());
        widest = std::max(widest, pin_distances(spread).far.number());
    }
    const double first = std::floor(std::log(least_wave / widest) / abscissa_step);
    const double last = std::ceil(std::log(most_wave / closest) / abscissa_step);
    for (double k = first; k <= last; ++k) waves_.push_back(std::exp(abscissa_step * k));
    weights_.resize(readings_ * 2 * waves_.size());
    for (std::size_t w = 0; w < waves_.size(); ++w) {
        const Complex part = abscissa_step * waves_[w] * Complex(std::sqrt(0.5), std::sqrt(0.5)) *
                             Complex(0, -2 / pi);
        for (std::size_t i = 0; i < readings_; ++i) {
            const auto [near, far] = pin_distances(spreads[i]);
            const Complex weight = part * (hankel(waves_[w], near) - hankel(waves_[w], far)) /
                                   (1 / near - 1 / far).number();
            weights_[i + readings_ * w] = weight.real();
            weights_[i + readings_ * (waves_.size() + w)] = -weight.imag();
        }
    }
}

Sight Sounding::look(const LogSoil& soil) const {
    Transform transform(soil);
    const std::size_t figures = soil.size();
    const std::size_t waves = waves_.size();
    Eigen::MatrixXd parts(index(2 * waves), index(1 + figures));
    for (std::size_t w = 0; w < waves; ++w) {
        const auto fill = [&](std::size_t column, const Complex& value) {
            parts(index(w), index(column)) = value.real();
            parts(index(waves + w), index(column)) = value.imag();
        };
        fill(0, transform.at(waves_[w]) - transform.upper());
        for (std::size_t f = 0; f < figures; ++f) {
            fill(1 + f, transform.slopes()[f] - (f == 0 ? transform.upper() : 0));
        }
    }
    const Eigen::Map<const Eigen::MatrixXd> weights(weights_.data(), index(readings_),
                                                    index(2 * waves));
    const Eigen::MatrixXd sums = weights * parts;
    Sight sight;
    sight.seen.resize(readings_);
    sight.slopes.resize(readings_ * figures);
    for (std::size_t i = 0; i < readings_; ++i) {
        const double rho = transform.upper() + sums(index(i), 0);
        sight.seen[i] = std::log(rho);
        for (std::size_t f = 0; f < figures; ++f) {
            const double own = f == 0 ? transform.upper() : 0;
            sight.slopes[i + readings_ * f] = (own + sums(index(i), index(1 + f))) / rho;
        }
    }
    return sight;
}

Outcome<std::vector<OhmMetres>> apparent_over(const field::Strata& soil,
                                              const std::vector<Spread>& spreads) {
    Faults faults = faults_of(spreads);
    for (Fault& fault : field::faults_of(soil)) faults.push_back(std::move(fault));
    if (!faults.empty()) return failed(std::move(faults));
    std::vector<OhmMetres> apparent;
    for (double seen : Sounding(spreads).look(log_soil(soil)).seen) {
        apparent.push_back(ohm_metres(std::exp(seen)));
    }
    return apparent;
}

}  // namespace toft::soil
