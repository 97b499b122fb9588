#pragma once
// The same drawing for paper that is white already: no ink is spent on the tone of the page.

#include "drawing/scene.h"

namespace toft::print {

/// `scene` on clear ground, with white wherever it had the colour of the page (halos of words, gaps
/// in lines).
drawing::Scene on_white(drawing::Scene scene);

}  // namespace toft::print
