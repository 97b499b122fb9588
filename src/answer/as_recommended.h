#pragma once
// The job with just the runs that the cheapest way builds, for whoever looks at one way of feeding
// only: questions and levers.

#include "answer/answer.h"

namespace toft::answer {

/// As built; where nothing sound was found, with the first choice of runs there is. A job of one
/// run stays as it is.
site::Job as_recommended(const Question& question);

/// "Which building feeds which is taken as recommended: …"; empty where nothing is left to choose.
std::string feeding_taken(const site::Job& stated, const site::Job& built);

}  // namespace toft::answer
