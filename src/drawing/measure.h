#pragma once
// How much room text and shapes take. Text is measured as if set in DejaVu Sans, without kerning.
// Against lines set and rasterised by librsvg 2.54 in the normal, bold and slanted faces, the width
// is within 0.6 % for words, figures and symbols (from 0.1 % too small to 0.6 % too large), and up
// to 9 % too large for rows of pairs that kern, such as "AVAVAV". Liberation Sans and Arial are
// narrower for ordinary words (recalled, not measured).

#include "drawing/scene.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::drawing {

/// Parts of an em in DejaVu Sans, from the baseline.
inline constexpr double ascent = 0.928;       ///< up to the accents of capitals
inline constexpr double descent = 0.236;      ///< down to the tails of g and y
inline constexpr double cap_height = 0.729;   ///< of capitals and figures
inline constexpr double line_spacing = 1.25;  ///< from baseline to baseline, our choice

/// Width of one line at `size` (of the em, user units).
double text_width(std::string_view text, double size, Weight weight = Weight::normal);

/// Width of spans one after another in the style's size and weight.
double text_width(const Spans& spans, const TextStyle& style);

/// `text` broken at spaces into lines no wider than `width`; a word that is wider than that alone
/// has a line of its own. Line feeds in the text break too; spaces around a break are dropped and
/// several spaces are one. No text gives no lines.
std::vector<std::string> wrap(std::string_view text, double width, double size,
                              Weight weight = Weight::normal);

/// The room `item` takes, stroke and halo counted; larger than the ink for curves and round joins,
/// never smaller. Text reaches from the descent to the ascent. Nothing drawn gives the box of
/// nothing.
Box box_of(const Item& item);

Box box_of(const Items& items);

}  // namespace toft::drawing
