#pragma once
// The last step: what may come later and undo a sound choice. It bears on no choice by itself.
// Page: docs/methods/earthing-choice.md.

#include "walk/step.h"

namespace toft::walk {

Ruling later(const Facts& facts);
std::string later_found(const Facts& facts);
std::vector<std::string> later_changes(const Facts& facts, const Ruling& ruling);

}  // namespace toft::walk
