#include "drawing/style.h"

#include <algorithm>
#include <cmath>

namespace toft::drawing {

namespace {

double linear(std::uint32_t channel) {
    const double share = static_cast<double>(channel & 0xffu) / 255;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

}  // namespace

double luminance(Colour colour) {
    const auto rgb = static_cast<std::uint32_t>(colour);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
}

double contrast(Colour a, Colour b) {
    const double one = luminance(a);
    const double other = luminance(b);
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace toft::drawing
