#pragma once
// The final circuits of a scheme as every face shows them.

#include "answer/recorded.h"

#include <vector>

namespace toft::answer {

/// What a device of that kind is called.
const char* kind_of_device(tables::Kind kind);

/// The circuits that were designed behind the recorded run, in the job's order.
std::vector<CircuitAnswer> circuits_of(const Recorded& recorded);

}  // namespace toft::answer
