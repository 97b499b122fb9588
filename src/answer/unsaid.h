#pragma once
// What nobody said and no range can stand for: the house's electrode, what the house draws, how
// deep a cable lies. A rule that reads it is not known, and every scheme hangs on it, whatever is
// built. Page: docs/methods/open-facts.md.

#include "answer/answer.h"

#include <string>
#include <vector>

namespace toft::answer {

/// Adds the pointers of such facts to those that a scheme hangs on, each once.
void add_unsaid(const study::Setting<Silent>& setting, std::vector<std::string>& facts);

/// Pointers of such facts of all runs of a job as built.
std::vector<std::string> unsaid_of(const Question& question);

}  // namespace toft::answer
