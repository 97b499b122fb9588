#pragma once
// The devices in series in words: who clears a fault, and what goes dark otherwise.

#include "answer/answer.h"
#include "study/selectivity.h"

namespace toft::answer {

/// One pair; `far` is the device it protects, null for the operator's fuse over the head of the
/// run.
template <class L>
SelectivityAnswer selectivity_answer(const study::SelectivePair<L>& pair,
                                     const study::FarDevice* far);

/// "selective up to 610 A, but of overloads of 100 to 200 A nothing is promised".
std::string selectivity_words(const SelectivityAnswer& pair);

}  // namespace toft::answer
