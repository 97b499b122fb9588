#pragma once
// A drawing as a PNG image, of its printed sheet or alone.

#include "base/outcome.h"
#include "drawing/scene.h"
#include "print/font.h"
#include "print/printed.h"

namespace toft::print {

inline constexpr int least_dpi = 72;
inline constexpr int usual_dpi = 200;
inline constexpr int most_dpi = 600;

/// What a PNG shows: a whole sheet of A4 (see sheet_for), or the drawing alone at its natural size.
enum class Ground { a4, drawing };

/// `scene` on white with `dpi` dots an inch, which the file states, so that it prints at its size.
/// The same input gives the same bytes. Faults: `dpi` when out of range, and those of sheet_for,
/// sheet_of and paint.
Outcome<Printed> to_png(const drawing::Scene& scene, const Fonts& fonts, int dpi = usual_dpi,
                        Ground ground = Ground::a4);

}  // namespace toft::print
