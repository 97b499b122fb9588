#pragma once
// Operation of a fuse or breaker from its slowest curve: the time by which it is sure to have
// operated at a current, the current that makes it operate in a time, the energy it lets through.
// Between points the curve is straight on logarithmic axes. Above its last point a filled fuse lets
// through the energy of that point and no more; a breaker or a rewirable fuse the current squared
// for the last time, or the tabulated limit where lower.
// BS 7671 Appendix 3; BS EN 60898-1. Page: docs/methods/device-curve.md.

#include "base/ledger.h"
#include "tables/device.h"

namespace toft::device {

/// Longest operating time; "not within the curve" is infinity.
template <class L>
ValueIn<L, Seconds> operating_time(L& ledger, const Name& name, const tables::Device& device,
                                   const ValueIn<L, Amperes>& current);

/// Ia: the current that operates the device within `time` (0.1 to 5 s); infinite where the curve
/// ends before so short a time.
template <class L>
ValueIn<L, Amperes> operating_current(L& ledger, const Name& name, const tables::Device& device,
                                      Seconds time);

/// Largest I2t let through at `current`; infinite where the device does not operate within its
/// curve.
template <class L>
ValueIn<L, AmpereSquareSeconds> let_through(L& ledger, const Name& name,
                                            const tables::Device& device,
                                            const ValueIn<L, Amperes>& current);

}  // namespace toft::device
