#pragma once
// What is joined to the earth terminal at either end of the run, and what is kept from it: where
// its earth comes from, the run's conductors, bonds, the electrode, the circuits.

#include "parts/word_column.h"
#include "picture/stage.h"

#include <string>
#include <vector>

namespace toft::joins {

/// What a conductor from the bar leads to.
enum class LeadsTo { source, run, metal, electrode, circuits, nothing };

struct Tap {
    LeadsTo to = LeadsTo::source;
    std::string words;
};

/// The near end's terminal. Precondition of both: the stage has a scheme.
std::vector<Tap> near_taps(const picture::Stage& stage);

/// The outbuilding's terminal.
std::vector<Tap> far_taps(const picture::Stage& stage);

/// Metal of the outbuilding that gets no bond, each with why as far as the survey tells.
std::vector<std::string> unbonded_words(const picture::Stage& stage);

/// Where the outbuilding's earth comes from, in a sentence.
std::string source_words(const picture::Stage& stage);

/// The taps from the column's y down, the bar at the left.
void set_taps(const std::vector<Tap>& taps, parts::WordColumn& column);

}  // namespace toft::joins
