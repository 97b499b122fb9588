#pragma once
// What hangs on an open fact, in words: "up to 0.62 ohm: …, £1840; above: …, £84 more".

#include "answer/answer.h"

#include <string>

namespace toft::answer {

/// From the pieces of the fact's range; a sentence without its full stop.
std::string hanging_words(const UnknownAnswer& fact);

}  // namespace toft::answer
