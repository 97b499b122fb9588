#include "field/layer_images.h"

#include "field/layer_reflection.h"

#include <Eigen/Dense>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace toft::field {

namespace {

constexpr double aim = 1e-7;
constexpr std::array<double, 3> steps{0.3, 0.25, 0.2};  ///< of ln b, the coarsest first
constexpr double reach = 6;  ///< of the farthest image beyond the slowest bend of any kernel
constexpr double least_spread = 10;
constexpr double fitted = 0.1;     ///< between wave numbers of the fit, in ln l
constexpr double measured = 0.04;  ///< between wave numbers of the measured error
constexpr double nothing = 1e-13;  ///< an image not worth its sum

using Matrix = Eigen::MatrixXd;
using Index = Eigen::Index;

/// Exponents and wave numbers of one fit.
struct Scale {
    std::vector<double> away;
    double lowest = 0;  ///< ln of wave numbers
    double highest = 0;

    std::vector<double> wave_numbers(double between) const {
        std::vector<double> all;
        for (double u = lowest; u < highest; u += between) all.push_back(std::exp(u));
        return all;
    }
};

Scale scale_of(const Strata& soil, double step) {
    double thinnest = soil.layers.front().thickness.number();
    double thick = 0;
    double least = soil.deepest.number();
    double most = least;
    for (const Stratum& layer : soil.layers) {
        thinnest = std::min(thinnest, layer.thickness.number());
        thick += layer.thickness.number();
        least = std::min(least, layer.resistivity.number());
        most = std::max(most, layer.resistivity.number());
    }
    const double farthest = reach * thick * std::max(most / least, least_spread);
    Scale scale;
    for (double away = 2 * thinnest;; away *= std::exp(step)) {
        scale.away.push_back(away);
        if (away > farthest) break;
    }
    scale.lowest = std::log(1e-4 / farthest);
    scale.highest = std::log(25 / thinnest);
    return scale;
}

/// Kernels of the source layer `i` by column; rows are wave numbers.
struct Kernels {
    Matrix values;
    Eigen::RowVectorXd at_zero;
    Eigen::RowVectorXd at_infinity;
};

void put(const std::vector<LayerReflection>& pairs, std::size_t first,
         Eigen::Ref<Eigen::RowVectorXd> row) {
    for (Index p = 0; p < row.size() / 4; ++p) {
        const LayerReflection& pair = pairs[first + static_cast<std::size_t>(p)];
        row.segment<4>(4 * p) << pair.through, pair.above, pair.below, pair.both;
    }
}

using Sampled = std::vector<std::vector<LayerReflection>>;

struct Samples {
    std::vector<double> wave_numbers;
    Sampled pairs;

    Samples(const Strata& soil, std::vector<double> at) : wave_numbers(std::move(at)) {
        for (double l : wave_numbers) pairs.push_back(reflections(soil, l));
    }
};

Kernels kernels_of(const Strata& soil, const Samples& samples, std::size_t first, Index columns) {
    Kernels kernels{Matrix(static_cast<Index>(samples.pairs.size()), columns),
                    Eigen::RowVectorXd(columns), Eigen::RowVectorXd(columns)};
    Eigen::RowVectorXd row(columns);
    for (Index k = 0; k < kernels.values.rows(); ++k) {
        put(samples.pairs[static_cast<std::size_t>(k)], first, row);
        kernels.values.row(k) = row;
    }
    put(reflections(soil, 0), first, kernels.at_zero);
    put(reflections(soil, std::numeric_limits<double>::infinity()), first, kernels.at_infinity);
    return kernels;
}

Matrix exponentials(const std::vector<double>& wave_numbers, const std::vector<double>& away) {
    Matrix matrix(static_cast<Index>(wave_numbers.size()), static_cast<Index>(away.size()));
    for (Index k = 0; k < matrix.rows(); ++k) {
        for (Index n = 0; n < matrix.cols(); ++n) {
            matrix(k, n) = std::exp(-wave_numbers[static_cast<std::size_t>(k)] *
                                    away[static_cast<std::size_t>(n)]);
        }
    }
    return matrix;
}

/// Amounts by image and kernel. The last image is what the sum at 0 leaves to it; a kernel counts
/// for less where all are large.
Matrix amounts_of(const Kernels& kernels, const Matrix& exponential) {
    const Index last = exponential.cols() - 1;
    const Eigen::RowVectorXd sum = kernels.at_zero - kernels.at_infinity;
    Matrix basis = exponential.leftCols(last).colwise() - exponential.col(last);
    Matrix wanted = kernels.values.rowwise() - kernels.at_infinity;
    wanted -= exponential.col(last) * sum;
    const Eigen::VectorXd weight =
        kernels.values.cwiseAbs().rowwise().maxCoeff().cwiseMax(1).cwiseInverse();
    Eigen::ColPivHouseholderQR<Matrix> factor(weight.asDiagonal() * basis);
    factor.setThreshold(1e-12);
    Matrix amounts(last + 1, kernels.values.cols());
    amounts.topRows(last) = factor.solve(weight.asDiagonal() * wanted);
    amounts.row(last) = sum - amounts.topRows(last).colwise().sum();
    return amounts;
}

/// M of the header for one kernel.
double most_missed(const Eigen::VectorXd& missed) {
    double square = missed(0) * missed(0) / 2;  // below the lowest wave number it falls like l
    double slope_square = square;
    for (Index k = 0; k < missed.size(); ++k) {
        square += missed(k) * missed(k) * measured;
        if (k == 0) continue;
        const double slope = (missed(k) - missed(k - 1)) / measured;
        slope_square += slope * slope * measured;
    }
    const double norm = std::sqrt(square);
    const double sharp = std::sqrt(norm * (std::sqrt(slope_square) + 0.37 * norm));
    return std::sqrt(2.0) * std::max(missed.cwiseAbs().maxCoeff(), sharp);
}

std::vector<LayerImage> images_of(double first, const Eigen::VectorXd& amounts,
                                  const std::vector<double>& away) {
    std::vector<LayerImage> images;
    if (std::fabs(first) > nothing) images.push_back({first, 0});
    for (Index n = 0; n < amounts.size(); ++n) {
        if (std::fabs(amounts(n)) > nothing) {
            images.push_back({amounts(n), away[static_cast<std::size_t>(n)]});
        }
    }
    return images;
}

ImageFit fit_with(const Strata& soil, double step) {
    const Scale scale = scale_of(soil, step);
    const Samples to_fit(soil, scale.wave_numbers(fitted));
    const Samples to_measure(soil, scale.wave_numbers(measured));
    const Matrix basis = exponentials(to_fit.wave_numbers, scale.away);
    const Matrix fine = exponentials(to_measure.wave_numbers, scale.away);
    const std::size_t count = soil.layers.size() + 1;
    ImageFit fit;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t first = pair_number(i, i, count);
        const auto columns = static_cast<Index>(4 * (count - i));
        const Kernels kernels = kernels_of(soil, to_fit, first, columns);
        const Matrix amounts = amounts_of(kernels, basis);
        Matrix missed = kernels_of(soil, to_measure, first, columns).values - fine * amounts;
        missed.rowwise() -= kernels.at_infinity;
        for (Index p = 0; p < columns; p += 4) {
            double error = 0;
            std::array<std::vector<LayerImage>, 4> rows;
            for (Index row = 0; row < 4; ++row) {
                error += most_missed(missed.col(p + row));
                rows[static_cast<std::size_t>(row)] =
                    images_of(kernels.at_infinity(p + row), amounts.col(p + row), scale.away);
            }
            fit.error = std::max(fit.error, error);
            fit.pairs.push_back({rows[0], rows[1], rows[2], rows[3]});
        }
    }
    return fit;
}

}  // namespace

ImageFit fit_images(const Strata& soil) {
    ImageFit best = fit_with(soil, steps.front());
    for (std::size_t s = 1; s < steps.size() && best.error > aim; ++s) {
        ImageFit finer = fit_with(soil, steps[s]);
        if (finer.error < best.error) best = std::move(finer);
    }
    return best;
}

}  // namespace toft::field
