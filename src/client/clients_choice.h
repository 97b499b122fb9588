#pragma once
// The choice a client has, side by side and in plain words. Page: docs/papers/clients-choice.md.

#include "paper/subject.h"

namespace toft::paper {

/// The subject's scheme need not exist: then the paper says why nothing is offered.
page::Paper clients_choice(const Subject& subject);

}  // namespace toft::paper
