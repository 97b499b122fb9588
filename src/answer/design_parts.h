#pragma once
// Pieces of an answer that one run and a tree of runs are both made of.

#include "answer/answer.h"

namespace toft::answer {

using Citations = std::vector<const Citation*>;

/// A scheme of the run asked about, of rank 1; what it rests on is added to `citations`.
SchemeAnswer written(const Question& question, const search::Contender& contender,
                     const study::Setting<Silent>& setting, Citations& citations);

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

/// Designs all runs of a job of several at once.
Answer design_tree(const Question& question);

}  // namespace toft::answer
