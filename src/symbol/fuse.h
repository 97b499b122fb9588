#pragma once
// Fuses after IEC 60617: a long box with the line drawn through it (S00362, recalled); a
// switch-fuse is a switch-disconnector and a fuse in series.

#include "symbol/pen.h"

namespace toft::symbol {

inline constexpr double fuse_length = 40;
inline constexpr double switch_fuse_length = 76;

drawing::Items fuse(const Axis& axis, const drawing::Style& pen);

/// The same with leads cut short, for where room is scarce.
inline constexpr double short_fuse_length = 26;
drawing::Items short_fuse(const Axis& axis, const drawing::Style& pen);

drawing::Items switch_fuse(const Axis& axis, const drawing::Style& pen);

}  // namespace toft::symbol
