#pragma once
// What is joined to an earth terminal and what must not be, one under another as the screws of a
// bar are.

#include "parts/ways.h"
#include "parts/word_column.h"
#include "picture/stage.h"

#include <string>
#include <vector>

namespace toft::board {

/// A conductor that comes to the terminal, or is kept from it.
struct Joined {
    std::string words;
    bool joined = true;
};

/// The outbuilding's terminal: its source of earth first, then bonds and circuits, then what ends
/// joined to nothing. Precondition: the stage has a scheme.
std::vector<Joined> far_joined(const picture::Stage& stage, const std::vector<parts::Way>& ways);

/// "the house", or the name of the building that feeds the run.
std::string near_end_words(const answer::RunAnswer& run);

/// The house's main earthing terminal, as far as the run is concerned.
std::vector<Joined> house_joined(const picture::Stage& stage);

/// Where the outbuilding's earth comes from, in a sentence.
std::string earth_source_words(const picture::Stage& stage);

/// How many conductors hold on the outbuilding's terminal: each circuit's counts for itself.
int earth_screws(const std::vector<Joined>& joined, std::size_t ways);

/// The list from the column's y down, its bar at the left.
void set_joined(const std::vector<Joined>& joined, parts::WordColumn& column);

}  // namespace toft::board
