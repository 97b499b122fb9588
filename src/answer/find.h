#pragma once
// Any buildable scheme by its key, sound or fallen, so that it can be explained.

#include "answer/answer.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::answer {

/// The scheme of that key among all that the search considers; none when there is no such key.
std::optional<study::RunScheme> find_scheme(const Question& question, const std::string& key);

/// The key nearest to one that is not known.
std::string nearest_scheme(const Question& question, const std::string& key);

}  // namespace toft::answer
