#pragma once
// Pieces of an answer that one run and a tree of runs are both made of.

#include "answer/answer.h"
#include "worked/worked.h"

namespace toft::answer {

using Citations = std::vector<const Citation*>;

void append(Citations& to, const Citations& more);

/// Adds it unless it is there already.
void add_once(std::vector<std::string>& words, const std::string& word);

/// The run asked about.
worked::Subject subject_of(const Question& question);

/// A scheme of the run asked about, of rank 1; what it rests on is added to `citations`.
SchemeAnswer written(const Question& question, const search::Contender& contender,
                     const study::Setting<Silent>& setting, Citations& citations);

/// A scheme's price by the low and by the high end of the book.
struct PriceRange {
    price::Price<Silent> low, high;
};

/// The same scheme with the same figures, but without working, and so without words for how well
/// the figures of its findings are known, without bill and without the lengths that its rules
/// allow.
SchemeAnswer written_bare(const Question& question, const search::Contender& contender,
                          const study::Setting<Silent>& setting, const PriceRange& range);

/// The search of a job of one run, and what it was made ready as.
struct Searched {
    search::Result found;
    std::vector<study::Setting<Silent>> settings;  ///< one for each number of phases

    const study::Setting<Silent>& setting_of(const search::Contender& contender) const;
};

/// Searches the run asked about; the answer is told all but schemes, walks, advice, open facts and
/// sources.
Searched searched(const Question& question, const search::Options& options, Answer& answer);

/// Marks the scheme that costs least with the energy it loses.
void mark_least_over_years(const search::Result& found, Answer& answer);

/// What the setting takes for granted, each sentence once.
void add_assumed(const study::Setting<Silent>& setting, Answer& answer);

/// What is not offered for want of a price.
void add_left_out(const Question& question, Answer& answer);

/// Sources of everything cited, each with its basis, in order.
void finish_sources(const Question& question, const Citations& citations, Answer& answer);

/// Rules that schemes fell to, as they stand in an answer.
DroppedAnswer dropped_answer(const search::Dropped& dropped);

/// Place of the scheme of that key, or of the first where there is none; none where none is.
std::optional<std::size_t> chosen_of(const std::vector<SchemeAnswer>& schemes,
                                     const std::string& key);

/// Designs all runs of a job of several at once.
Answer design_tree(const Question& question);

}  // namespace toft::answer
