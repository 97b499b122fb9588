#pragma once
// Trenches cut through, one drawing for each sort that occurs, all of one sheet at one scale; where
// nothing is dug, how each leg is fixed instead. Page: docs/ground-sheet.md.

#include "digging/measured.h"
#include "trench/works.h"

namespace toft::digging {

/// All sorts of trench of the works, one under another.
Measured trench_sheet(const tables::Trench& tables, const trench::Works& works,
                      const Wanted& wanted);

/// One sort, for a paper, at the scale of all of them; the sort must exist.
Measured trench_section(const tables::Trench& tables, const trench::Works& works, std::size_t sort,
                        double width);

/// "Trench of A2: lawn, 0.6 m over the cable, 21 m long".
std::string sort_words(const trench::Works& works, const trench::Sort& sort);

}  // namespace toft::digging
