#include "field/soil.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

constexpr double most_contrast = 1e4;
constexpr std::size_t most_layers = 8;

bool above_zero(double figure) { return figure > 0 && std::isfinite(figure); }

/// The largest of some figures over the smallest; the figures are above 0.
template <class Of>
double spread(const std::vector<Stratum>& layers, const Of& of) {
    double least = of(layers.front());
    double largest = least;
    for (const Stratum& layer : layers) {
        least = std::min(least, of(layer));
        largest = std::max(largest, of(layer));
    }
    return largest / least;
}

}  // namespace

Strata merged(const Strata& soil) {
    Strata result{{}, soil.deepest};
    for (const Stratum& layer : soil.layers) {
        if (!result.layers.empty() && result.layers.back().resistivity == layer.resistivity) {
            result.layers.back().thickness += layer.thickness;
        } else {
            result.layers.push_back(layer);
        }
    }
    if (!result.layers.empty() && result.layers.back().resistivity == soil.deepest) {
        result.layers.pop_back();
    }
    return result;
}

std::vector<double> boundaries(const Strata& soil) {
    std::vector<double> depths;
    double depth = 0;
    for (const Stratum& layer : soil.layers) depths.push_back(depth += layer.thickness.number());
    return depths;
}

Faults faults_of(const Strata& soil) {
    Faults faults;
    const auto refuse = [&](const std::string& pointer, const char* says) {
        faults.push_back({"soil", pointer, says, "", {}});
    };
    const auto rho = [](const Stratum& layer) { return layer.resistivity.number(); };
    const auto thickness = [](const Stratum& layer) { return layer.thickness.number(); };
    const bool two = soil.layers.size() <= 1;
    bool resistive = above_zero(soil.deepest.number());
    bool thick = true;
    if (!resistive) refuse("", "the soil needs a resistivity above 0");
    for (std::size_t i = 0; i < soil.layers.size(); ++i) {
        const std::string pointer = two ? "" : fmt::format("/{}", i);
        if (!above_zero(rho(soil.layers[i]))) {
            if (resistive || !two) refuse(pointer, "the soil needs a resistivity above 0");
            resistive = false;
        }
        if (!above_zero(thickness(soil.layers[i]))) {
            refuse(pointer, two ? "the upper layer needs a thickness above 0"
                                : "the layer needs a thickness above 0");
            thick = false;
        }
    }
    if (soil.layers.size() > most_layers) refuse("", "the soil has more than 8 layers");
    std::vector<Stratum> all = soil.layers;
    all.push_back({soil.deepest, metres(1)});
    if (resistive && spread(all, rho) > most_contrast) {
        refuse("", "the layers differ by more than 10 000 times");
    }
    if (thick && !two && spread(soil.layers, thickness) > most_contrast) {
        refuse("", "a layer is more than 10 000 times as thick as another");
    }
    return faults;
}

}  // namespace toft::field
