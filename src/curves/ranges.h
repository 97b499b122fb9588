#pragma once
// The fault currents of the run, a bar each from the smallest to the largest, under the paper and
// to its scale of currents.

#include "answer/answer.h"
#include "curves/log_paper.h"

#include <string>
#include <vector>

namespace toft::curves {

struct Range {
    std::string words;  ///< "earth fault, far end"
    answer::FaultRange amperes;
    bool far = false;  ///< at the far end; drawn full, the near end hollow
};

/// Earth faults and line to neutral at both ends; line to line too where there are three phases.
std::vector<Range> ranges_of(const answer::FigureAnswers& figures);

/// "312 to 640 A".
std::string range_words(const answer::FaultRange& range);

inline constexpr double range_row = 16;

/// For tight paper: from `top` down, each range's words and figures on the paper's width over its
/// bar, `tall_range_row` each below a heading of `range_heading`.
drawing::Items tall_range_rows(const LogPaper& paper, const std::vector<Range>& ranges, double left,
                               double top);
inline constexpr double tall_range_row = 32;
inline constexpr double range_heading = 20;

/// Rows from `top` down, with words and figures right of the paper up to `right`.
drawing::Items range_rows(const LogPaper& paper, const std::vector<Range>& ranges, double top,
                          double right);

}  // namespace toft::curves
