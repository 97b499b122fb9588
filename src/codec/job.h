#pragma once
// The job file: JSON text in, a valid job out, or every fault at once.

#include "base/outcome.h"
#include "site/job.h"
#include "tables/catalogue.h"

#include <string_view>

namespace toft::codec {

/// Reads a job. Words for soils and cable families are those of the catalogue.
Outcome<site::Job> read_job(std::string_view text, const tables::Catalogue& catalogue);

}  // namespace toft::codec
