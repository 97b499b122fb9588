#pragma once
// Which two or three schemes of an answer are laid before a client, and why each. Page:
// docs/papers/clients-choice.md.

#include "paper/subject.h"

#include <string>
#include <vector>

namespace toft::paper {

struct Choice {
    std::size_t scheme = 0;  ///< place in the answer's list
    std::string reason;      ///< "the cheapest", in a few words
};

inline constexpr std::size_t most_choices = 3;

/// The first is the cheapest sound one (of all, where none is sound). Then, as far as there are
/// any: the one the subject names; the cheapest with another way of earthing, or else with a more
/// dependable path; the cheapest that comes near the most headroom to be had for a stated share
/// more, with a path no less dependable; the cheapest that hangs on open facts and would save
/// money. None where nothing can be built.
std::vector<Choice> choices_of(const Subject& subject);

/// Ids of buildings that both feed and earth in different ways.
std::vector<std::string> earthed_differently(const answer::SchemeAnswer& a,
                                             const answer::SchemeAnswer& b);

}  // namespace toft::paper
