#pragma once
// What a run needs and its bill has nothing for: insulated ends of armour beyond those it prices,
// the earthing conductor of a rod, duct for what carries signals. None has an amount.

#include "ware/draft.h"

namespace toft::ware {

/// Ends at which the armour of the part's cables is joined to nothing, those of cables side by side
/// each.
int insulated_ends(const answer::RunAnswer& run);

std::vector<Draft> unpriced_rows(const tables::Catalogue& catalogue, const RunBill& part);

}  // namespace toft::ware
