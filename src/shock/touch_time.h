#pragma once
// How long a touch voltage may last, on the curve for dry or for wet conditions (IEC TR 61200-413,
// the basis of the disconnection times of IEC 60364-4-41; from memory).
//
//   t = t1 (U/U1)^(ln(t2/t1)/ln(U2/U1))          straight on log paper between two points
//
// Up to the curve's threshold (50 V dry, 25 V wet) no time is set. From there to the first point
// the first point's time holds. Past the last point less than its time is allowed, but how much is
// not known: nothing counts as inside there. Page: docs/methods/touch-time.md.

#include "base/interpolate.h"
#include "tables/shock.h"

namespace toft::shock {

enum class TouchVerdict {
    no_limit,  ///< the curve sets no time at this voltage; no promise of harmlessness
    inside,    ///< the time is on the curve or shorter
    beyond     ///< longer, or a voltage past the curve
};

enum class TouchRange {
    unlimited,  ///< up to the threshold
    limited,    ///< the time is the curve's
    past_curve  ///< the time is the last point's and only an upper bound of the true one
};

template <class L>
struct LongestTouch {
    TouchRange range = TouchRange::limited;
    ValueIn<L, Seconds> time{};  ///< infinite where unlimited
};

/// The threshold up to which the curve sets no time.
const Cited<Volts>& no_time_below(const tables::Shock& tables, tables::TouchCurve curve);

template <class L>
LongestTouch<L> longest_touch(L& ledger, const Name& name, const tables::Shock& tables,
                              tables::TouchCurve curve, const ValueIn<L, Volts>& touch);

/// `lasts` may be infinite: a lost neutral is not cleared by anything.
TouchVerdict touch_verdict(const tables::Shock& tables, tables::TouchCurve curve, Volts touch,
                           Seconds lasts);

}  // namespace toft::shock
