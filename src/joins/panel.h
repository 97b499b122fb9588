#pragma once
// One stretch of the run: an enclosure at either end, the cable between them, and every conductor
// from terminal to terminal.

#include "drawing/scene.h"
#include "picture/stage.h"

#include <cstddef>

namespace toft::joins {

struct Panel {
    drawing::Items items;
    double foot = 0;
};

/// Between `left` and `right` from `top` down. Precondition: the stage has a scheme with that
/// stretch.
Panel panel(const picture::Stage& stage, std::size_t stretch, const drawing::Box& room);

}  // namespace toft::joins
