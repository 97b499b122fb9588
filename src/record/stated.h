#pragma once
// What the job states, fact by fact, with how each is known.

#include "site/job.h"

#include <string>
#include <vector>

namespace toft::paper {

struct StatedFact {
    std::string fact;
    std::string value;  ///< "0.21 Ω", "0.2 to 0.35 Ω", "not stated"
    std::string known;  ///< measured, declared, assumed; how an open fact is taken
};

struct FactGroup {
    std::string about;  ///< the intake, a building, a run
    std::vector<StatedFact> facts;
};

/// Of the whole job: every stated fact that a calculation reads, and those an answer cannot do
/// without even where they are not stated.
std::vector<FactGroup> facts_of(const site::Job& job);

}  // namespace toft::paper
