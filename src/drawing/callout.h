#pragma once
// A few lines of words that belong to one point of a drawing: beside a thin rule, with a leader.

#include "drawing/placement.h"
#include "drawing/scene.h"

#include <vector>

namespace toft::drawing {

struct Callout {
    Point target = {};              ///< what the words are about
    std::vector<Spans> lines = {};  ///< the first is set bold
    double size = 11;               ///< of the em, user units
    double reach = 18;              ///< how far from the target it would stand
    Colour colour = palette::ink;
    Colour under = palette::paper;  ///< halo of the words
};

/// The box that the words and the rule take, at the origin.
Box callout_box(const Callout& callout);

/// The callout set in `box`, which has the size of its `callout_box`. The rule stands on the side
/// of the target.
Items callout_at(const Callout& callout, const Box& box);

/// All callouts, each in a place of its own inside the room. A callout without room is drawn where
/// it would best stand, over what is there. Leaders may cross lines; words never do when placed.
Items callouts_in(const std::vector<Callout>& callouts, const Room& room);

}  // namespace toft::drawing
