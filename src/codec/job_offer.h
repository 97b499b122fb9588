#pragma once
// Whether anything that is sold fits what a job names. Private to codec.

#include "base/outcome.h"
#include "site/job.h"
#include "tables/catalogue.h"

namespace toft::codec {

/// Faults of a (valid) job whose named cables, devices and places leave nothing to build with.
Faults nothing_on_offer(const site::Job& job, const tables::Catalogue& catalogue);

}  // namespace toft::codec
