#pragma once
// How each outbuilding of a job should be earthed, argued from its facts.
// Page: docs/methods/earthing-choice.md.

#include "answer/answer.h"

namespace toft::answer {

/// A walk for each outbuilding that a run feeds, in the order of the runs. `memo` as in Question.
std::vector<walk::Walk> walks_of(const tables::Catalogue& catalogue, const site::Job& job,
                                 study::GroundMemo* memo = nullptr);

/// What `walk` rests on.
std::vector<const Citation*> citations_of(const walk::Walk& walk);

}  // namespace toft::answer
