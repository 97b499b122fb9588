#pragma once
// Residual current protection and what goes dark as JSON trees. Private to codec.

#include "answer/answer.h"
#include "codec/document.h"

namespace toft::codec {

/// An array, a circuit each.
Json residual_json(const answer::GuardAnswer& guard);

Json dark_json(const answer::GuardAnswer& guard);

}  // namespace toft::codec
