#pragma once
// Which item of one list is which of another. Private to merge.

#include "merge/same.h"

#include <optional>
#include <vector>

namespace toft::merge {

/// By what the items of a list are told apart.
enum class Told {
    not_at_all,  ///< the list is one fact: numbers, words, points
    by_id,       ///< buildings, runs: ids are unique
    by_name,     ///< circuits; metalwork by `what`. Some may be called alike
    by_place,    ///< legs, layers, readings
};

/// What goes for all these lists, which may be null pointers.
Told told(const std::vector<const Json*>& lists);

/// What an item is called, under `Told::by_id` and `by_name`; empty for none.
std::string called(const Json& item);

/// For each item of `from` the place of the same item in `to`, if it is there.
using Pairs = std::vector<std::optional<std::size_t>>;

/// Nothing when it cannot be told: items called alike that are not the same any more and not as
/// many; under `by_place` lists of other lengths, or ones in which an item has moved.
std::optional<Pairs> pairs(const Json& from, const Json& to, Told told);

}  // namespace toft::merge
