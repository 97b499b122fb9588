#pragma once
// A scheme as words need it: what lies where, what stands at its head, how the far building is
// earthed. No figure is worked out.

#include "answer/answer.h"

#include <string>

namespace toft::answer {

/// What is built of the run; the residual current device at its head without a type.
RunAnswer outline_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme);

/// The scheme on one line, as short_words() says it.
std::string brief_words(const study::Setting<Silent>& setting, const study::RunScheme& scheme);

/// The cables of a run as an answer shows them: one entry a stretch, from the near end.
std::vector<StretchAnswer> stretches_of(const study::Setting<Silent>& setting,
                                        const study::RunScheme& scheme);

}  // namespace toft::answer
