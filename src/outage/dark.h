#pragma once
// What goes dark as a picture: the devices as a tree from the intake out, the faults as rows, what
// loses its supply as filled cells. Page: docs/methods/dark.md.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

namespace toft::outage {

/// Scheme `scheme_index` of `answer`, which may name none. Widths are taken into 320 to 1400.
drawing::Scene dark_picture(const site::Job& job, const answer::Answer& answer,
                            std::size_t scheme_index, double width);

}  // namespace toft::outage
