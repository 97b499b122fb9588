#pragma once
// What is shown after each change of a job, quickly: one scheme written whole, of the others only
// what sets them apart. Page: docs/requests.md.

#include "answer/answer.h"

namespace toft::answer {

/// As `design` gives them, without walks, advice, open facts and sources, and without the lengths
/// that rules allow. Of one run, findings come without the words for how well their figures are
/// known, and schemes without bills. The counts of the search are its own: it sets more aside than
/// a search that must also answer for open facts.
struct FirstAnswer {
    /// Of a job of one run the schemes that were not chosen hold rank, key, words, conditions,
    /// price (its sums, not its parts), headroom, what governs it, dependability, and how run and
    /// building are made; no figure of the run, no finding.
    Answer answer;
    std::optional<std::size_t> chosen;  ///< place of the one written whole; none where none is
};

/// Designs the (valid) job. The scheme of that key is chosen, or the first where none shown has it.
FirstAnswer first(const Question& question, const std::string& key);

/// The same for a job of one run: it needs no more of the program than that.
FirstAnswer first_of_run(const Question& question, const std::string& key);

}  // namespace toft::answer
