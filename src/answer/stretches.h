#pragma once
// The cables of a run as an answer shows them.

#include "answer/answer.h"

namespace toft::answer {

/// One entry a stretch, from the near end.
std::vector<StretchAnswer> stretches_of(const study::Setting<Silent>& setting,
                                        const study::RunScheme& scheme);

}  // namespace toft::answer
