#pragma once
// Where things stand across the sheet: the live conductors' line, the protective conductor beside
// it, the words, and where there is room a column of figures.

#include "parts/word_column.h"

namespace toft::diagram {

/// User units from the sheet's left edge.
struct Columns {
    double left = 0;
    double live = 0;     ///< the one line that stands for all live conductors
    double earth = 0;    ///< the protective conductor
    double words = 0;    ///< left edge of the words
    double figures = 0;  ///< left edge of the figures; on a narrow sheet that of the words
    double right = 0;
    double letters = 11;  ///< size of the words

    bool figures_beside() const { return figures > words; }
    double words_width() const { return (figures_beside() ? figures - 18 : right) - words; }
    double figures_width() const { return right - figures; }
};

using parts::narrowest_sheet;
/// From here on the figures have a column of their own.
inline constexpr double roomy_sheet = 640;
/// A4 upright at 96 units an inch.
inline constexpr double paper_wide = 794;
inline constexpr double paper_high = 1123;

inline Columns columns_for(double width) {
    if (width < roomy_sheet) return {10, 40, 96, 140, 140, width - 10, 10.5};
    const double words = 204;
    const double right = width - 40;
    return {40, 84, 150, words, words + 0.53 * (right - words), right, 11};
}

}  // namespace toft::diagram
