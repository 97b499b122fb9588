#pragma once
// A scale along one side of a plot: figures to user units, evenly or by decades, and the round
// figures that it is ruled at.

#include <cstddef>
#include <vector>

namespace toft::terrain {

/// `low` stands at `from`, `high` at `to` (user units; `from` may be the larger). By decades both
/// are above 0.
struct Scale {
    double low = 0;
    double high = 1;
    double from = 0;
    double to = 1;
    bool decades = false;

    /// Figures beyond the scale, and endless ones, count as its nearer end; what is no number as
    /// `low`.
    double at(double figure) const;
    /// True for a figure on the scale, ends with it.
    bool holds(double figure) const { return figure >= low && figure <= high; }
};

/// The round figures (1, 2 or 5 and zeros) evenly spaced on the scale, at most `most` (2 or more).
std::vector<double> even_steps(const Scale& scale, std::size_t most);

/// 1, 2 and 5 of each decade on the scale.
std::vector<double> decade_steps(const Scale& scale);

/// The least of 1, 2, 5 and zeros that is no smaller; 1 for what is not above 0 or has no end.
double rounded_up(double figure);

/// The largest of 1, 2, 5 and zeros that is no larger; 1 for what is not above 0 or has no end.
double rounded_down(double figure);

}  // namespace toft::terrain
