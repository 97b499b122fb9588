#pragma once
// A scheme in plain English, for people who are no electricians: no unit or symbol that is not
// explained. Page: docs/papers/clients-choice.md.

#include "paper/subject.h"
#include "parts/words.h"

#include <string>
#include <utility>
#include <vector>

namespace toft::paper {

/// The same answer with another of its schemes.
Subject with_scheme(const Subject& subject, std::size_t scheme);

/// "a 32 amp breaker", "a 20 amp breaker that also cuts off leaks to earth", "a 32 amp fuse".
std::string device_plain(const answer::RunAnswer& run);

/// "in the house's board", "in a box of its own beside the meter", "in the board of Garage".
std::string place_plain(const answer::RunAnswer& run);

/// Whose board feeds the run: "the house" or the name of the outbuilding.
std::string feeder_name(const answer::RunAnswer& run);

/// What is built for one run: cable, where it starts, which earth.
std::string sentence_plain(const answer::SchemeAnswer& part);

/// What the earth of its building rests on.
std::string rests_on(const answer::SchemeAnswer& part);

/// The limit that leaves least room, by the answer's name for it.
std::string limit_plain(const std::string& governed_by);

/// Those of tables::situations that hold of the part's building.
std::vector<std::string> situations_of(const Subject& subject, const answer::SchemeAnswer& part);

/// Solar and batteries in that building and in those fed through it: "Battery in Garage".
std::vector<std::string> sources_behind(const Subject& subject, const std::string& building);

using Fillings = std::vector<std::pair<std::string, std::string>>;

/// `words` with each {name} replaced by what it stands for.
std::string filled(std::string words, const Fillings& fillings);

/// What {building}, {feeder}, {device} and {months} stand for in plain words.
Fillings plain_fillings(const Subject& subject, const answer::SchemeAnswer& part);

/// The sentences of that list that hold of any of the parts, each once, filled by the first.
std::vector<std::string> notices_for(const Subject& subject, const std::string& list,
                                     const std::vector<const answer::SchemeAnswer*>& parts);

/// The trade's words that occur in what was written so far, with their meaning; none: no rows.
page::Table words_used(const Subject& subject, const std::vector<page::Block>& blocks);

/// "A, B and C".
std::string listed(const std::vector<std::string>& names);

using parts::capital;

}  // namespace toft::paper
