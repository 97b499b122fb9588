#pragma once
// Whether one device opens in one fault. Private to guard.

#include "guard/dark.h"

namespace toft::guard {

/// `circuit`: the one the fault is on, where it is on one.
Certainty opening(const DarkCase& c, Trouble trouble, std::size_t circuit, const Opener& opener);

}  // namespace toft::guard
