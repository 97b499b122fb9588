#pragma once
// What stands beside a symbol: a name, a few plain lines, and figures with word, symbol, value.

#include "diagram/columns.h"
#include "drawing/scene.h"
#include "parts/words.h"

#include <string>
#include <vector>

namespace toft::diagram {

using parts::broken;

struct Figure {
    std::string word;       ///< "load current"
    drawing::Spans symbol;  ///< Ib; may be empty
    std::string value;      ///< "17.9 A"
};

struct Note {
    std::string head;
    std::vector<std::string> lines = {};
    std::vector<Figure> figures = {};
};

struct SetNote {
    drawing::Items items;
    double foot = 0;  ///< nothing of the note reaches below
};

/// The note from `top` down in the columns of words and figures. Long texts are broken, and cut
/// when they run on for more than a few lines; nothing leaves its column.
SetNote set_note(const Note& note, const Columns& columns, double top);

}  // namespace toft::diagram
