#pragma once
// The section along the route made to fit a narrow sheet: numbers where paper has words, letters at
// the legs, and the list of both below.

#include "picture/stage.h"
#include "picture/word_column.h"

namespace toft::picture {

/// House, ground, run and outbuilding over the column's width, their notes numbered below, then the
/// legs by letter with the scales.
void narrow_section(const Stage& stage, WordColumn& column);

}  // namespace toft::picture
