#pragma once
// Every figure of every run of a scheme, with its working.

#include "answer/answer.h"
#include "answer/recorded.h"

#include <string>
#include <vector>

namespace toft::paper {

struct RunWorkings {
    std::string run;
    std::vector<answer::Working> all;  ///< rules with a figure first, then figures
    std::size_t lines = 0;             ///< of working, each counted once
};

/// The workings of the runs of `way`, a scheme of the question's answer, from the house outwards.
std::vector<RunWorkings> workings_of(const answer::Question& question,
                                     const answer::SchemeAnswer& way);

}  // namespace toft::paper
