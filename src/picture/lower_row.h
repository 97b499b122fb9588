#pragma once
// Below the section: with a scheme, its cable, armour ends and use of limits; without, what fell.

#include "picture/stage.h"

namespace toft::picture {

/// Precondition: the stage has a scheme.
drawing::Items scheme_row(const Stage& stage, const drawing::Box& row);

/// The rules that nothing met, with what came nearest.
drawing::Items reasons_row(const answer::Answer& answer, const drawing::Box& row);

}  // namespace toft::picture
