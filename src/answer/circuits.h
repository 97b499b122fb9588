#pragma once
// The final circuits of a scheme as every face shows them.

#include "answer/answer.h"
#include "worked/worked.h"

#include <vector>

namespace toft::answer {

/// What a device of that kind is called.
const char* kind_of_device(tables::Kind kind);

/// The circuits that were designed behind the run worked out, in the job's order.
template <class L>
std::vector<CircuitAnswer> circuits_of(const worked::Worked<L>& worked);

}  // namespace toft::answer
