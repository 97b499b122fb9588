#pragma once
// A text as numbered letters of the font, each in its place.

#include "drawing/text_style.h"
#include "print/font.h"

#include <string>
#include <vector>

namespace toft::print {

struct Glyph {
    unsigned long number = 0;  ///< in the font
    double x = 0;              ///< from the start of the line, user units
    std::string utf8;          ///< the character it stands for, as a search or copy will find it
};

/// The letters of one span: all of one size, on one baseline.
struct Row {
    double size = 0;  ///< of the em, user units
    double drop = 0;  ///< of the baseline below that of the line, user units
    std::vector<Glyph> glyphs;
};

struct Typeset {
    std::vector<Row> rows;
    double width = 0;        ///< from the first letter's start to the last one's end, user units
    std::u32string missing;  ///< characters the font lacks, shown as `replacement`
};

/// The line of `text`, cleaned as drawing::drawable cleans, from 0 to the right, without kerning.
Typeset typeset(const drawing::Text& text, const Face& face);

}  // namespace toft::print
