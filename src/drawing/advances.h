#pragma once
// How far the pen moves for a character of DejaVu Sans, from the tables inside the font files.

#include "drawing/text_style.h"

namespace toft::drawing {

/// Advance of `character` in em. Known for ASCII, Latin-1, Latin Extended-A, Greek and the signs of
/// the trade; any other counts 1 em, more than nearly every letter has, and a combining mark counts
/// nothing. Source: table hmtx of DejaVuSans.ttf and DejaVuSans-Bold.ttf, version 2.37 (1 em is
/// 2048 units there); the slanted faces differ in 26 of these characters by at most 0.22 em.
double advance(char32_t character, Weight weight);

}  // namespace toft::drawing
