#pragma once
// Drawings as PDF: lines and letters, no pixels.

#include "base/outcome.h"
#include "drawing/scene.h"
#include "print/font.h"
#include "print/printed.h"

#include <vector>

namespace toft::print {

/// `scene` on white A4 (see sheet_for), its letters embedded, its words to be found and copied, its
/// title and description in the file's properties. `date` (year-month-day) is the day of making
/// that the file names; there is no clock here, and the same input gives the same bytes. Faults:
/// `date`, and those of sheet_for and paint.
Outcome<Printed> to_pdf(const drawing::Scene& scene, const Fonts& fonts, const std::string& date);

/// Sheets laid out for paper, each a page of just its size; title and description of the first name
/// the file, and where the title changes the file can be jumped to by it. Faults: `no-pages` for
/// none, and the same otherwise.
Outcome<Printed> to_pdf(const std::vector<drawing::Scene>& sheets, const Fonts& fonts,
                        const std::string& date);

}  // namespace toft::print
