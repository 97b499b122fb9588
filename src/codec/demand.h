#pragma once
// Demand as a JSON tree. Private to codec.

#include "answer/answer.h"
#include "codec/document.h"

namespace toft::codec {

Json demand_json(const answer::DemandAnswer& demand);

}  // namespace toft::codec
