#include "field/strata_ground.h"

#include "base/pi.h"
#include "field/layer_reflection.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

/// A point of the surface sees rows that differ only in the sign of its depth alike.
bool on_surface(const Bar& bar) { return bar.half == 0 && bar.middle.z == 0; }

}  // namespace

StrataGround::StrataGround(const Strata& soil) {
    double depth = 0;
    for (const Stratum& layer : soil.layers) {
        const double bottom = depth + layer.thickness.number();
        layers_.push_back({layer.resistivity.number(), depth, bottom});
        depth = bottom;
    }
    layers_.push_back({soil.deepest.number(), depth, depth});
    ImageFit fit = fit_images(soil);
    pairs_ = std::move(fit.pairs);
    error_ = fit.error;
}

std::size_t StrataGround::layer_of(const Bar& bar) const {
    std::size_t layer = 0;
    while (layer + 1 < layers_.size() && bar.middle.z > layers_[layer].bottom) ++layer;
    return layer;
}

double StrataGround::between(const Bar& a, const Bar& b) const {
    const std::size_t i = layer_of(a);
    const std::size_t j = layer_of(b);
    const double rho = layers_[std::min(i, j)].resistivity / (4 * pi);
    if (i < j) return rho * across(a, b, i, j);
    if (i > j) return rho * across(b, a, j, i);
    if (i > 0) return rho * in_one(a, b, i);
    return rho * (on_surface(b) ? in_top(b, a) : in_top(a, b));
}

double StrataGround::in_top(const Bar& a, const Bar& b) const {
    // The surface mirrors all: what it mirrors and what it does not are the same images twice over.
    const double twice = 2 * layers_[0].bottom;
    const std::vector<LayerImage>& images = pairs_[0].below;
    const double up = row_sum(a, b, {-1, -1, twice}, images);
    const double down = row_sum(a, b, {-1, 1, twice}, images);
    const double direct = mean_inverse(a, b);
    if (on_surface(a)) return 2 * (direct + up + down);
    Bar mirrored = b;
    mirrored.middle.z = -b.middle.z;
    mirrored.along.z = -b.along.z;
    return direct + mean_inverse(a, mirrored) + up + down + row_sum(a, b, {1, 1, twice}, images) +
           row_sum(a, b, {1, -1, twice}, images);
}

double StrataGround::in_one(const Bar& a, const Bar& b, std::size_t layer) const {
    const Layer& here = layers_[layer];
    const LayerImages& images = pairs_[pair_number(layer, layer, layers_.size())];
    double sum = mean_inverse(a, b) + row_sum(a, b, {1, 1, -2 * here.top}, images.above);
    if (layer + 1 == layers_.size()) return sum;
    const double twice = 2 * (here.bottom - here.top);
    sum += row_sum(a, b, {-1, -1, 2 * here.bottom}, images.below);
    sum += row_sum(a, b, {1, -1, twice}, images.both);
    return sum + row_sum(a, b, {-1, 1, twice}, images.both);
}

double StrataGround::across(const Bar& upper, const Bar& lower, std::size_t i,
                            std::size_t j) const {
    const LayerImages& images = pairs_[pair_number(i, j, layers_.size())];
    const bool has_end = j + 1 < layers_.size();
    const double top = layers_[i].top;
    const double bottom = layers_[j].bottom;
    double sum = row_sum(upper, lower, {-1, 1, 0}, images.through);
    if (has_end) sum += row_sum(upper, lower, {-1, -1, 2 * bottom}, images.below);
    if (i == 0 && on_surface(upper)) return 2 * sum;
    sum += row_sum(upper, lower, {1, 1, -2 * top}, images.above);
    if (has_end) sum += row_sum(upper, lower, {1, -1, 2 * (bottom - top)}, images.both);
    return sum;
}

double StrataGround::row_sum(const Bar& a, const Bar& b, const Row& row,
                             const std::vector<LayerImage>& images) {
    const double w = row.base + row.up * a.middle.z + row.down * b.middle.z;
    const double sign = -row.up * row.down;
    Bar image = b;
    image.along.z = sign * b.along.z;
    const Vector d = a.middle - b.middle;
    double sum = 0;
    std::size_t n = 0;
    for (; n < images.size(); ++n) {
        const double height = w + images[n].away;
        const double square = d.x * d.x + d.y * d.y + height * height;
        if (is_far(a, b, square)) break;
        image.middle.z = sign * b.middle.z - row.up * (row.base + images[n].away);
        sum += images[n].amount * mean_inverse(a, image);
    }
    // The rest are farther still: the same series with what does not change taken out.
    const double flat = d.x * d.x + d.y * d.y + softness(a, b);
    const double ax = a.along.x * d.x + a.along.y * d.y;
    const double bx = b.along.x * d.x + b.along.y * d.y;
    const double az = a.along.z * row.up;
    const double bz = image.along.z * row.up;
    const double aa = a.half * a.half / 6;
    const double bb = b.half * b.half / 6;
    for (; n < images.size(); ++n) {
        const double height = w + images[n].away;
        const double one = 1 / (flat + height * height);
        const double ua = ax + az * height;
        const double ub = bx + bz * height;
        const double second = 3 * one * (aa * ua * ua + bb * ub * ub) - aa - bb;
        sum += images[n].amount * std::sqrt(one) * (1 + second * one);
    }
    return sum;
}

}  // namespace toft::field
