#pragma once
// What is said of choices: what all say alike, how one differs from the first, what a client must
// do or know. Page: docs/papers/clients-choice.md.

#include "client/choices.h"

#include <string>
#include <vector>

namespace toft::paper {

using ChoiceLines = std::vector<std::string>;

/// What the schemes of the choices say alike, and what each says alone.
struct Shared {
    ChoiceLines common;
    std::vector<ChoiceLines> own;  ///< beside the lists given
};

Shared shared_lines(const std::vector<ChoiceLines>& lists);

/// One under another in a cell; with dashes, where there are several.
std::string joined_lines(const ChoiceLines& lines, bool dashes = false);

/// Each with a capital first letter.
ChoiceLines capitals(ChoiceLines lines);

/// Whom the scheme asks to tell, when and why.
ChoiceLines told_lines(const answer::SchemeAnswer& scheme);

/// "45 %".
std::string percent_left(double share);

/// "Choice 2 costs £12.00 more than choice 1; …": how a choice differs from the first, by the
/// figures of the answer.
std::string difference_words(const Subject& subject, const std::vector<Choice>& choices,
                             std::size_t which);

/// The energy lost in the cable is worth a row: by its share of the price, or because it changes
/// which choice costs least in the end.
bool loss_matters(const Subject& subject, const std::vector<Choice>& choices);

/// True while the prices come from a book that nobody trades by.
bool prices_invented(const answer::Answer& answer);

}  // namespace toft::paper
