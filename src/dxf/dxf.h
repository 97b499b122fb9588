#pragma once
// A drawing as a drawing exchange file (DXF) of release 12 in ASCII, which every drawing program
// reads: lines, polylines, circles and words in the measure of the thing drawn. Format: the maker's
// DXF reference for release 12, recalled, not seen. Page: docs/ground-sheet.md.

#include "base/outcome.h"
#include "drawing/scene.h"

#include <string>

namespace toft::dxf {

/// How the drawing becomes the thing: x to the right and y up from `zero`.
struct Space {
    double metres_a_unit = 1;  ///< above 0
    drawing::Point zero = {};  ///< of the scene, user units
};

/// The file; one unit of it is a metre. Things are on the layer of the innermost named kind of the
/// groups they are in (SHEET outside all), their order kept. Light fills, halos and opacity are
/// left out, dark fills are solid; curves become short lines. Faults: `no-scale`, `not-finite`.
Outcome<std::string> to_dxf(const drawing::Scene& scene, const Space& space);

}  // namespace toft::dxf
