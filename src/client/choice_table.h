#pragma once
// Choices side by side in tables, a column each. Page: docs/papers/clients-choice.md.

#include "client/choice_words.h"

#include <string>
#include <utility>
#include <vector>

namespace toft::paper {

/// Why each is there, what is built and what it gives; of several runs a row for each building.
page::Table what_it_is(const Subject& subject, const std::vector<Choice>& choices);

/// The price in its parts, before tax, tax and total, to the penny as in the answer; with the
/// energy lost in the cable where that matters.
page::Table price_table(const Subject& subject, const std::vector<Choice>& choices);

/// What its safety rests on, what stays a risk, what each asks and warns of that not all do. What
/// all say alike of the first two is not in the table but told once.
struct Asked {
    page::Table table;
    std::vector<std::pair<std::string, std::string>> alike;  ///< name and words
};

Asked what_it_asks(const Subject& subject, const std::vector<Choice>& choices);

}  // namespace toft::paper
