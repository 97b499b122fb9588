#pragma once
// The parts of a price.

namespace toft::price {

enum class Part { house_end, run, ground, far_end, test_and_paper, remedies };
inline constexpr int parts = 6;

/// "house end", "run", …
const char* part_word(Part part);

}  // namespace toft::price
