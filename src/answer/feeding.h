#pragma once
// Which building feeds which, in words, and what runs share a trench.

#include "answer/answer.h"
#include "tree/feeding.h"

namespace toft::answer {

/// "garage from the house, gym from garage": a job as built, in the order of its runs.
std::string fed_words(const site::Job& job);

/// Which run was chosen for each building that has several, and what the others come to. Ranks are
/// left open.
std::vector<FeedAnswer> feeds_of(const site::Job& job, const tree::Feedings& found);

/// Ids of runs of a job that are not built.
std::vector<std::string> not_built(const site::Job& job, const site::Job& built);

/// Trenches that runs of a job as built share.
std::vector<TrenchAnswer> trenches_of(const site::Job& built);

}  // namespace toft::answer
