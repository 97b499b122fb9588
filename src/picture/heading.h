#pragma once
// The sheet's head and foot: job, the scheme in a sentence, how it stands; who decides, and on what data
// it rests.

#include "answer/answer.h"
#include "drawing/scene.h"

#include <string>

namespace toft::picture {

/// What is said in place of a scheme's sentence.
std::string no_scheme_words();

/// Title, sentence and standing. `scheme` may be null.
drawing::Items heading(const answer::Answer& answer, const answer::SchemeAnswer* scheme);

drawing::Items footing(const answer::Answer& answer);

}  // namespace toft::picture
