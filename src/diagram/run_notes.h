#pragma once
// What the diagram says beside the run's cables and their ends.

#include "diagram/note.h"
#include "diagram/stretches.h"

namespace toft::diagram {

/// Size, make, legs, cores, armour and what lies beside the cable.
Note stretch_note(const Stretch& stretch);

Note near_note(const RunLine& run);
Note far_note(const RunLine& run);

/// The box where `before` ends and `after` begins.
Note joint_note(const answer::StretchAnswer& before, const answer::StretchAnswer& after);

}  // namespace toft::diagram
