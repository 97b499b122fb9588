#pragma once
// What a job as built says of its runs: which feeds which, which are left out, which share a
// trench.

#include "site/job.h"

namespace toft::site {

/// "the house", or the name of the building, or its id.
std::string name_in(const Job& job, const std::string& building);

/// "from the garage"; by which run, where another one leads between the same two buildings.
std::string start_words(const Job& job, const Run& run);

/// "garage from the house, gym from garage": in the order of the runs.
std::string fed_words(const Job& job);

/// Ids of runs of a job as stated that are not in it as built.
std::vector<std::string> not_built(const Job& stated, const Job& built);

/// A trench that several runs lie in.
struct SharedTrench {
    std::string name;
    std::string dug_for;              ///< id of the run that pays for digging
    std::vector<std::string> beside;  ///< ids of those that lie in it too

    std::string says() const;
};

/// Those of a job as built, by name.
std::vector<SharedTrench> shared_trenches(const Job& built);

}  // namespace toft::site
