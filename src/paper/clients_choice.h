#pragma once
// The paper on which a client chooses: two or three schemes side by side in plain English, each
// with its price in five parts to the penny, what it asks and what it risks; what is assumed and
// left out; room to sign. Page: docs/papers/clients-choice.md.

#include "paper/choices.h"

#include <string>
#include <vector>

namespace toft::paper {

/// What the schemes of the choices say alike, and what each says alone.
struct Shared {
    std::vector<std::string> common;
    std::vector<std::vector<std::string>> own;  ///< beside the lists given
};

Shared shared_lines(const std::vector<std::vector<std::string>>& lists);

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
