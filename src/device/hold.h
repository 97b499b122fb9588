#pragma once
// How long a device is sure to hold a current: the quick edge of its band. A step from point to
// point, for between two gates nothing is promised and a straight line would lie on the wrong side
// of a melting curve. IEC 60269-1 Tables 2, 3 and 7; BS EN 60898-1 Table 7. Page:
// docs/methods/device-hold.md.

#include "base/ledger.h"
#include "tables/device.h"

namespace toft::device {

/// Longest time the device is sure to hold `current` without operating, at most that of its longest
/// test (one to three hours); 0 where nothing is promised.
template <class L>
ValueIn<L, Seconds> holding_time(L& ledger, const Name& name, const tables::Device& device,
                                 const ValueIn<L, Amperes>& current);

}  // namespace toft::device
