#include "field/layer_reflection.h"

#include <cmath>

namespace toft::field {

std::vector<LayerReflection> reflections(const Strata& soil, double per_metre) {
    const std::size_t count = soil.layers.size() + 1;
    const auto rho = [&](std::size_t i) {
        return i + 1 < count ? soil.layers[i].resistivity : soil.deepest;
    };
    const auto mirror = [&](std::size_t from, std::size_t other) {
        return (rho(other) - rho(from)) / (rho(other) + rho(from));
    };
    std::vector<double> twice(count);  // e^(-2 l d): down through a layer and back
    for (std::size_t i = 0; i + 1 < count; ++i) {
        twice[i] = std::exp(-2 * per_metre * soil.layers[i].thickness.number());
    }
    std::vector<double> above(count, 1.0);
    std::vector<double> below(count, 0.0);
    for (std::size_t i = 1; i < count; ++i) {
        const double k = mirror(i, i - 1);
        const double back = above[i - 1] * twice[i - 1];
        above[i] = (k + back) / (1 + k * back);
    }
    for (std::size_t i = count - 1; i-- > 0;) {
        const double k = mirror(i, i + 1);
        const double back = below[i + 1] * twice[i + 1];
        below[i] = (k + back) / (1 + k * back);
    }
    std::vector<LayerReflection> pairs;
    for (std::size_t i = 0; i < count; ++i) {
        double through = 1 / (1 - above[i] * below[i] * twice[i]);
        for (std::size_t j = i; j < count; ++j) {
            if (j > i) {
                const double k = mirror(j - 1, j);
                through *= (1 + k) / (1 + k * below[j] * twice[j]);
            }
            pairs.push_back(
                {through, through * above[i], through * below[j], through * above[i] * below[j]});
        }
    }
    return pairs;
}

}  // namespace toft::field
