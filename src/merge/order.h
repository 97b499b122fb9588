#pragma once
// In which order the items of a merged list stand. Private to merge.

#include "merge/same.h"

#include <optional>
#include <vector>

namespace toft::merge {

/// One item of a merged list, and where it stands in the three it comes from.
struct Item {
    std::optional<std::size_t> base;
    std::optional<std::size_t> mine;
    std::optional<std::size_t> theirs;
};

/// Sorts the items that stay: in the order of the side that changed it (theirs, when both did);
/// what only one side has follows what it follows there. Where two new ones want one place, the
/// lesser text comes first, so that it does not matter which side is called mine.
std::vector<Item> in_order(const std::vector<Item>& items, const Json& mine, const Json& theirs);

}  // namespace toft::merge
