#pragma once
// Paper ruled by decades both ways: current to the right, 1 A to 20 kA, time upwards, 0.01 s to
// 10 000 s.

#include "drawing/scene.h"

#include <string>

namespace toft::curves {

inline constexpr double least_amperes = 1;
inline constexpr double most_amperes = 20000;
inline constexpr double least_seconds = 0.01;
inline constexpr double most_seconds = 10000;

struct LogPaper {
    drawing::Box box;
    double letters = 11;  ///< size of the words on it, user units

    /// Across the page, user units; currents off the paper count as its edge.
    double x(double amperes) const;
    /// Down the page; times off the paper count as its edge.
    double y(double seconds) const;
    /// True where a decade is too short for figures between its ends, and for words along lines.
    bool tight() const { return x(10) - x(1) < 130; }
    drawing::Point at(double amperes, double seconds) const { return {x(amperes), y(seconds)}; }
};

/// The ruling with its figures: currents below, times at the left, minute and hour at the right.
drawing::Items ruling(const LogPaper& paper);

/// "17.9 A", "1.2 kA".
std::string ampere_words(double amperes);

/// "0.1 s", "3600 s".
std::string second_words(double seconds);

}  // namespace toft::curves
