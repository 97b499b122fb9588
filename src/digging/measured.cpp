#include "digging/measured.h"

#include <algorithm>
#include <cmath>

namespace toft::digging {

double width_of(const Wanted& wanted) {
    constexpr double least = 320;
    constexpr double most = 1400;
    if (!std::isfinite(wanted.width) || wanted.width <= 0) return paper_wide;
    return std::clamp(wanted.width, least, most);
}

}  // namespace toft::digging
