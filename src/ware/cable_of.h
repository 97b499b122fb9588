#pragma once
// A cable of an answer or a bill as the tables know it.

#include "tables/catalogue.h"
#include "trench/duct.h"

#include <string>

namespace toft::ware {

/// The row of that family, that many cores and that section; null where there is none.
const tables::Cable* find_cable(const tables::Catalogue& catalogue, const std::string& family,
                                int cores, double live_mm2);

/// Of that item of a price book ("cable 3x10", "cable flat twin and earth 2x2.5"); null where it
/// names none.
const tables::Cable* cable_of_item(const tables::Catalogue& catalogue, const std::string& item);

/// What is known of it beside its overall diameter; null for nothing.
const tables::BuildRow* build_of(const tables::Catalogue& catalogue, const tables::Cable& cable);

/// "armoured cable BS 5467, copper, XLPE".
std::string cable_words(const tables::Catalogue& catalogue, const tables::Cable& cable);

/// "3-core 10 mm²"; flat twin and earth "2-core and earth 2.5 mm²".
std::string size_words(const tables::Cable& cable);

using trench::mm_words;

}  // namespace toft::ware
