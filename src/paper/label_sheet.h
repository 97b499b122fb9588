#pragma once
// Labels drawn to their true size, to be printed, cut out and fixed: a frame, big words, small
// words, lines to write on; or a chart of circuits. Laid out on as few sheets as their order lets.

#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::paper {

/// Heights of letters, user units of the em.
struct LetterSizes {
    double big = 0;
    double small = 0;
};

/// Letters whose capitals are that high, mm.
LetterSizes letter_sizes(double big_mm, double small_mm);

/// Ways of a board as they stand on its chart.
using ChartRow = std::vector<std::string>;

struct Label {
    std::string caption;  ///< beside the cut line: where it goes
    bool warning = false;
    double width = 0;  ///< user units, of the cut-out label
    std::string big;
    std::string small;
    std::vector<std::string> fields;
    std::vector<ChartRow> rows = {};  ///< of a chart: number, circuit, device, cable, RCD
};

/// Rows to write in that follow the circuits on a chart.
inline constexpr std::size_t blank_rows = 2;

/// The label from its own upper left corner, its cut line included; as high as it needs.
drawing::Scene label_scene(const Label& label, const LetterSizes& sizes);

/// The same, a chart in as many parts as keep each no higher than `most_height`.
std::vector<drawing::Scene> label_scenes(const Label& label, const LetterSizes& sizes,
                                         double most_height);

/// Labels side by side and under one another, the highest first, no sheet larger than that; with a
/// line of 100 mm to hold a ruler to.
std::vector<drawing::Scene> label_sheets(const std::vector<drawing::Scene>& labels, double width,
                                         double height);

}  // namespace toft::paper
