#pragma once
// The scale of a plan or a section, of those that rulers have, and its bar.

#include "drawing/scene.h"

#include <vector>

namespace toft::digging {

/// The first of `ladder` (1 to so much, rising) at which something so many metres wide and high
/// fits into so many user units; the last, times ten as often as it takes, where none does.
struct Fit {
    double wide_m = 0, high_m = 0;
    double wide = 0, high = 0;  ///< room, user units
};
double fitting(const std::vector<double>& ladder, const Fit& fit);

/// Scales of plans and of sections.
const std::vector<double>& plan_scales();
const std::vector<double>& section_scales();

/// A bar of four equal steps in round metres with its figures, at most `most` wide; `left` is its
/// upper left corner. It takes `bar_high` and stays within `most` + 30.
drawing::Items scale_bar(double one_to, drawing::Point left, double most);
inline constexpr double bar_high = 26;

/// "Scale 1:200 where this sheet is printed 176 mm wide; at any other size go by the bar." Of a
/// drawing on a paper, whose size is known: "Scale 1:200 on A4; …".
std::string scale_words(double one_to, double sheet_width, bool alone);

}  // namespace toft::digging
