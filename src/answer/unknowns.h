#pragma once
// What each open fact does to the answer: the search is run again with that fact at either end of
// its range, all others as they are; only the first scheme of each search is compared.

#include "answer/answer.h"

namespace toft::answer {

/// Effects of the open facts of the job, the weightiest first; `found` is the search as things
/// stand.
std::vector<UnknownAnswer> effects_of_unknowns(const Question& question,
                                               const std::vector<study::OpenFact>& open,
                                               const search::Result& found);

}  // namespace toft::answer
