#pragma once
// A paper laid out on sheets of A4: head and foot with "page n of N", nothing cut off, nothing lost
// between two pages.

#include "page/blocks.h"

namespace toft::page {

/// Of a standing sheet of A4, user units.
inline constexpr double sheet_width = drawing::units_of_mm(210);
inline constexpr double sheet_height = drawing::units_of_mm(297);

/// What words may fill: room on the left to punch and bind.
inline constexpr drawing::Box field{drawing::units_of_mm(20), drawing::units_of_mm(22),
                                    sheet_width - drawing::units_of_mm(14),
                                    sheet_height - drawing::units_of_mm(22)};

/// The same of a lying sheet.
inline constexpr drawing::Box lying_field{drawing::units_of_mm(14), drawing::units_of_mm(22),
                                          sheet_height - drawing::units_of_mm(14),
                                          sheet_width - drawing::units_of_mm(22)};

/// At least one sheet, each a scene of just the sheet's size.
std::vector<drawing::Scene> pages(const Paper& paper);

/// Writes at the foot of a sheet of `pages` which one it is of a pack of several papers.
void mark_sheet(drawing::Scene& sheet, std::size_t number, std::size_t count);

}  // namespace toft::page
