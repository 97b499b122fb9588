#pragma once
// A job of which only some runs are built. Where several runs lead to one building, one of them is
// built; every calculation is made of a job as built, in which each building has one run to it and
// legs that share a trench know of one another. Page: docs/methods/feeding.md.

#include "site/job.h"

namespace toft::site {

/// Some building has more than one run to it.
bool has_choice(const Job& job);

/// The job with only those runs (places in its list), in its own order. Of legs in one trench the
/// longest is dug for, the others lie in what is dug; each has the others for neighbours where the
/// survey does not say how many it has. A leg that is alone in its trench no longer names it.
Job as_built(const Job& job, const std::vector<std::size_t>& runs);

/// All runs of a job that leaves nothing to choose.
Job as_built(const Job& job);

/// "/runs/3": where the run stands in the job as its user stated it.
std::string run_pointer(const Job& job, std::size_t run);

/// Cables of other runs in a trench are so many at most.
inline constexpr std::size_t most_neighbours = 5;

}  // namespace toft::site
