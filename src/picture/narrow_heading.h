#pragma once
// Head and foot of a sheet as narrow as a phone: what heading.h says, one under another.

#include "answer/answer.h"
#include "parts/word_column.h"

namespace toft::picture {

/// Title, sentence, standing and every caution. `scheme` may be null.
void narrow_heading(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                    parts::WordColumn& column);

/// The rules that nothing met, with what came nearest, and the facts that decide.
void narrow_reasons(const answer::Answer& answer, parts::WordColumn& column);

/// Who decides, and on what data it rests.
void narrow_footing(const answer::Answer& answer, parts::WordColumn& column);

}  // namespace toft::picture
