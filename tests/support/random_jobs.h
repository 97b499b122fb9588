#pragma once
// Whole jobs drawn at random, with facts left out or bracketed as surveys leave them, small enough
// that every scheme can be tried.

#include "site/job.h"

namespace toft::support {

/// A valid job, the same for the same seed on every machine. A few hundred to a few thousand
/// schemes.
site::Job random_job(unsigned seed);

}  // namespace toft::support
