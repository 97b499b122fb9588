#pragma once
// The record of a design, for the file: the decision and who signs, drawings, what is to be built,
// every rule, what was stated, the earthing argued, every line of working once, sources.
// Page: docs/papers/design-record.md.

#include "paper/subject.h"

namespace toft::paper {

page::Paper design_record(const Subject& subject);

}  // namespace toft::paper
