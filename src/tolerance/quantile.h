#pragma once
// Figures by their share: of a hundred as likely as each other, the one that so many stay below.

#include "site/fact.h"

namespace toft::tolerance {

/// Standard deviations from the middle of a bell to either end: what 95.4 of 100 keep within.
inline constexpr double bell_reach = 2;

/// The figure from `low` to `high` that `share` (0 to 1) of all stay below. Even: each part of the
/// range as likely as another of its width. Bell: a normal distribution about the middle whose
/// range reaches two standard deviations to either side, cut off at the ends.
double quantile(site::Spread spread, double low, double high, double share);

/// The share that stays below `x` standard deviations of a normal distribution.
double normal_share(double x);

}  // namespace toft::tolerance
