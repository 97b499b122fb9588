#pragma once
// One run as the person with pliers sees it: every conductor by its colour and its letter from the
// terminal at the near end to the terminal at the far one, where the armour is joined and where it
// is kept from everything, what is on the earth terminals. Page: docs/conductors-picture.md.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>

namespace toft::joins {

/// A4 upright at 96 units an inch.
inline constexpr double paper_wide = 794;

/// The first run of `job` (valid) in scheme `scheme_index` of `answer`, which was worked out from
/// it. Where the index names no scheme: why none stands. `width` in user units, at least
/// `parts::narrowest_sheet`; the height is what the run needs. The same input gives the same scene.
drawing::Scene conductors_picture(const site::Job& job, const answer::Answer& answer,
                                  std::size_t scheme_index, double width = paper_wide);

/// The same without head and foot, for a sheet that has its own: ends and conductors alone where
/// `lists` is false, and what is on the earth terminals where it is true. `job` has the part's run
/// first (answer::seen_from).
drawing::Scene run_conductors(const site::Job& job, const answer::SchemeAnswer& part, double width,
                              bool lists = true);

}  // namespace toft::joins
