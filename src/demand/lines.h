#pragma once
// Currents of the lines of a supply: which line a single-phase circuit is put on, and what the
// neutral carries. Page: docs/methods/lines.md.

#include "base/ledger.h"

#include <array>
#include <vector>

namespace toft::demand {

/// One line, or three; the second and third stand at 0 where there is one.
template <class L>
struct Lines {
    std::array<ValueIn<L, Amperes>, 3> each{};
};

/// The line of least current among the first `lines`; the first of several.
template <class L>
std::size_t least_loaded(const Lines<L>& lines, int count);
template <class L>
std::size_t most_loaded(const Lines<L>& lines, int count);

/// What decides on which line a circuit is put.
struct Spread {
    Amperes full;
    int phases = 1;
    bool later = false;
};

/// For circuits that use every line.
inline constexpr int every_line = -1;

/// The line of each circuit, 0 to 2, or `every_line`. Single-phase circuits go one by one to the
/// line that then has least: first those that are there today, the largest first, then those that
/// come later, which no longer move them.
std::vector<int> spread(const std::vector<Spread>& circuits, int phases);

/// Current of the neutral of three lines of equal power factor, 120 degrees apart: the fundamental
/// leaves what the lines differ by; third harmonics of the three are in step and add up.
/// IEC 60364-5-52 annex E. `third` may be all 0.
template <class L>
ValueIn<L, Amperes> neutral_current(L& ledger, const Lines<L>& lines, const Lines<L>& third,
                                    const char* of);

}  // namespace toft::demand
