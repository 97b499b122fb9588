#pragma once
// The devices in series in words: who clears a fault, and what goes dark otherwise.

#include "answer/answer.h"
#include "study/selectivity.h"

namespace toft::answer {

/// One pair; `index` is 0 for the operator's fuse over the head of the run, then by setting.far.
SelectivityAnswer selectivity_answer(const study::Setting<Recording>& setting,
                                     const study::SelectivePair<Recording>& pair,
                                     std::size_t index);

/// "selective up to 610 A, but of overloads of 100 to 200 A nothing is promised".
std::string selectivity_words(const SelectivityAnswer& pair);

}  // namespace toft::answer
