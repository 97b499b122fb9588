#pragma once
// Where the ends of a run's cable are terminated, as far as glands care.

#include "answer/answer.h"
#include "site/job.h"
#include "tables/ware.h"

namespace toft::ware {

/// The harsher of the two ends of that stretch. What is not stated counts as outdoors, except that
/// a house is not taken to be wet.
tables::GlandPlace gland_place(const site::Job& job, const site::Run& run,
                               const answer::StretchAnswer& stretch);

}  // namespace toft::ware
