#pragma once
// A job that stands as a tree inside a larger document.

#include "base/outcome.h"
#include "codec/document.h"
#include "site/job.h"
#include "tables/catalogue.h"

namespace toft::codec {

/// As read_job of job.h; pointers of faults begin at the job.
Outcome<site::Job> read_job_tree(const Json& tree, const tables::Catalogue& catalogue);

}  // namespace toft::codec
