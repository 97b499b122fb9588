#pragma once
// The verbs, a file each. Private to request.

#include "request/request.h"

namespace toft::request {

Verb about_verb();
Verb ask_verb();
Verb check_verb();
Verb design_verb();
Verb explain_verb();
Verb first_verb();
Verb levers_verb();
Verb paper_verb();
Verb picture_verb();
Verb place_verb();  ///< the picture verb with the picture of the place alone
Verb prices_verb();
Verb readings_verb();
Verb why_verb();

/// What every verb about a job takes.
std::vector<Taken> job_and(std::vector<Taken> more);

}  // namespace toft::request
