#pragma once
// What hangs on each open fact of a job: whether the answer changes with it, where, and what
// knowing it may save. A fact is looked at alone, all others at their worse end, and, where that
// shows nothing, with all others at their better. Page: docs/methods/unknowns.md.

#include "unknown/pieces.h"

namespace toft::unknown {

/// What a fact does to the answer; not looked at where whoever asks has stopped before.
enum class Effect { none, price, decides, unlooked };

/// "does not matter", "changes the price only", "decides", "not looked at".
const char* effect_word(Effect effect);

struct Hanging {
    study::OpenFact fact;
    Effect effect = Effect::none;
    bool together = false;             ///< only once others are known to be well
    std::vector<std::string> with;     ///< pointers of other facts that matter, each of which, well
                                       ///< itself, is enough for that; empty where it takes several
    std::vector<Piece> pieces;         ///< over its range; none where it does not matter
    bool stepped = false;              ///< it takes some values only, and pieces end on them
    std::optional<double> saves;       ///< pounds with tax that knowing it alone may save; none
                                       ///< where there is no sound answer to save on
    std::optional<double> saves_with;  ///< … once all others are known to be well
    bool opens = false;                ///< some of its values alone make a sound answer possible
    bool closes = false;               ///< some leave nothing sound, however well all others are
};

/// By the job's list of open facts. `rows` tell which values a fact may take.
std::vector<Hanging> hanging_on(const solve::Solver& solver,
                                const std::vector<tables::FindOut>& rows);

}  // namespace toft::unknown
