#pragma once
// Whole jobs drawn at random, with facts left out or bracketed as surveys leave them, small enough
// that every scheme can be tried.

#include "site/job.h"

namespace toft::support {

/// A valid job, the same for the same seed on every machine. A few hundred to a few thousand
/// schemes.
site::Job random_job(unsigned seed);

/// The same job over ground that was looked at: layers, pins or rods read at some time of the year
/// or none, an electrode of any kind, and the house's earth stated or not. A few readings at most.
site::Job random_ground_job(unsigned seed);

/// The same job with loads circuit by circuit, of every kind, in the house too; what the house
/// draws known in any way or none; and a scenario wished for or not.
site::Job random_demand_job(unsigned seed);

}  // namespace toft::support
