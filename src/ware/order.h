#pragma once
// What to ask for at the counter: pieces to cut, drums, coils, rolls, how many.

#include "ware/draft.h"

#include <string>

namespace toft::ware {

/// Of a merged row: "cut 37 m (Garage), 23 m (Gym); or 1 × 100 m, 40 m left over".
std::string order_words(const tables::Ware& ware, const Draft& draft);

}  // namespace toft::ware
