#pragma once
// What belongs to no device: the outline of an enclosure in dashes and dots, bars, joints and
// arrows.

#include "symbol/pen.h"

namespace toft::symbol {

/// The outline of a board or another enclosure.
drawing::Items enclosure(const drawing::Box& box);

/// Two conductors joined.
drawing::Items joint(drawing::Point at, const drawing::Style& pen);

/// A bar that several conductors are joined to.
drawing::Items busbar(drawing::Point from, drawing::Point to);

/// A line that goes on elsewhere, with its arrow head at `to`.
drawing::Items onward(drawing::Point from, drawing::Point to, const drawing::Style& pen);

}  // namespace toft::symbol
