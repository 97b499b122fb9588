#pragma once
// Where a cable ends or changes: a gland (cable sealing end, a triangle with its point on the
// cable) and a joint box (two of them base to base, with the cores joined between). IEC 60617 part
// 3, recalled.

#include "symbol/pen.h"

namespace toft::symbol {

inline constexpr double gland_length = 15;
inline constexpr double joint_box_length = 34;

/// The cable leaves along the axis.
drawing::Items gland(const Axis& axis, const drawing::Style& pen);

drawing::Items joint_box(const Axis& axis, const drawing::Style& pen);

/// The armour on both sides of a cable `length` long, dashed as a screen is.
inline constexpr double armour_reach = 6.5;
drawing::Items armour(const Axis& axis, double length);

}  // namespace toft::symbol
