#pragma once
// The sheet a householder keeps by the board, one for each building: what is where, which earth it
// has and what follows, the test button, what to do when something trips, what not to add without
// asking, whom to call. Page: docs/papers/users-sheet.md.

#include "paper/subject.h"

#include <string>

namespace toft::paper {

/// "21 m buried, 0.6 m deep, under lawn": a leg as a householder would say it; what was not stated
/// is said to be not known.
std::string leg_plain(const site::Leg& leg);

}  // namespace toft::paper
