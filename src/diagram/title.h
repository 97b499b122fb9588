#pragma once
// The sheet's words above and below the diagram: job, scheme, how it stands; the key to the lines,
// who decides, and on what data it rests.

#include "diagram/ladder.h"

#include "answer/answer.h"

namespace toft::diagram {

struct SetTitle {
    drawing::Items items;
    double foot = 0;
};

/// `scheme` may be null.
SetTitle set_title(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                   const Columns& columns);

/// The key, who is to be told what, and who decides, from `top` on. `scheme` may be null.
SetTitle set_footing(const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                     const Columns& columns, double top);

/// A name across the sheet: what follows stands there.
void draw_zone(const std::string& name, Ladder& ladder);

}  // namespace toft::diagram
