#pragma once
// The section along the route made to fit a narrow sheet: numbers where paper has words, letters at
// the legs, and the list of both below.

#include "parts/word_column.h"
#include "picture/stage.h"

namespace toft::picture {

/// House, ground, run and outbuilding over the column's width, their notes numbered below, then the
/// legs by letter with the scales.
void narrow_section(const Stage& stage, parts::WordColumn& column);

}  // namespace toft::picture
