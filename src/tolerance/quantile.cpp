#include "tolerance/quantile.h"

#include <cmath>
#include <numbers>

namespace toft::tolerance {

double normal_share(double x) { return 0.5 * std::erfc(-x / std::numbers::sqrt2); }

double quantile(site::Spread spread, double low, double high, double share) {
    if (spread == site::Spread::even) return low + share * (high - low);
    const double cut = normal_share(-bell_reach);
    const double wanted = cut + share * (1 - 2 * cut);
    double below = 0;
    double above = 2 * bell_reach;
    for (int step = 0; step < 60; ++step) {
        const double middle = (below + above) / 2;
        (normal_share(middle - bell_reach) < wanted ? below : above) = middle;
    }
    return low + (high - low) * (below + above) / (4 * bell_reach);
}

}  // namespace toft::tolerance
