#pragma once
// What cable lies in and is held by: duct, cleats and clips, sand and tape. Each fills in a row
// that has its group, quantity and money already.

#include "ware/at_run.h"
#include "ware/draft.h"

namespace toft::ware {

/// Duct for the cable of that leg.
Draft duct_row(Draft plain, const tables::Catalogue& catalogue, const std::vector<Metres>& cables);

/// The cord that stays in a duct; the price has nothing for it.
Draft cord_row(Draft plain);

/// Cleats of armoured cable, clips of any other; without a cable only their name.
Draft clip_row(Draft plain, const tables::Catalogue& catalogue, const tables::Cable* cable);

/// Adds the tonnes of sand around something of that height, in a trench of the usual width.
Draft sand_row(Draft named, const tables::Catalogue& catalogue, Metres across);

/// What lies in the leg's trench is so high: the cable, or its duct; 0 where that is not known.
Metres across_at(const tables::Catalogue& catalogue, const AtRun& run, int leg);

}  // namespace toft::ware
