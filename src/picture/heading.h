#pragma once
// The sheet's head and foot: job, the scheme in a sentence, how it stands; who decides, and on what
// data it rests.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "finding/rule.h"

#include <string>

namespace toft::picture {

/// What is said in place of a scheme's sentence.
std::string no_scheme_words();

/// The heaviest verdict of all findings, and worse than "meets" when facts are open.
rules::Verdict standing_of(const answer::SchemeAnswer& scheme);

/// Which of the schemes it is, how it stands, and how far it is from its limits.
std::string standing_words(const answer::Answer& answer, const answer::SchemeAnswer& scheme);

struct Heading {
    drawing::Items items;
    double foot = 0;  ///< what stands below begins here
};

/// Title, sentence, standing and cautions. `scheme` may be null.
Heading heading(const answer::Answer& answer, const answer::SchemeAnswer* scheme);

drawing::Items footing(const answer::Answer& answer);

}  // namespace toft::picture
