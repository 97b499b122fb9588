#pragma once
// What is asked of one run of a job: the way in the answer that is meant, and the job as that way
// builds it.

#include "answer/answer.h"

#include <optional>
#include <string>

namespace toft::request {

/// A rank in place of a key.
bool rank_like(const std::string& which);

/// Place of that run in a job as built; it must be there.
std::size_t place_of(const site::Job& job, const std::string& run);

/// A scheme, with what of a tree stands before and behind its run.
struct Picked {
    site::Job job;        ///< as that way builds it
    std::size_t run = 0;  ///< in that job
    study::RunScheme scheme;
    std::optional<study::Incoming> incoming;
    bool bonds_beyond = false;
    std::vector<price::Item> bought_before = {};  ///< once for the place, by runs before it
};

/// The scheme of that rank in the answer's list, or of that key among all buildable ones; the
/// recommended one when nothing is named. Of a tree, it is about that run (empty: the first from
/// the house) as the recommended way, or that of the rank, leaves it; `left_out` where that way
/// builds another run in its place.
std::optional<Picked> pick(const answer::Question& question, const std::string& which,
                           const std::string& run, bool& left_out);

/// A run in a way of the answer, with only those ways that build the same runs.
struct Shown {
    site::Job job;
    std::string id;
    answer::Answer answer;
};

/// `run`: as stated; where it was not named, the first from the house that is built is shown in its
/// place. `index` of the way is then that among those kept. None where the way does not build it.
std::optional<Shown> shown_run(const site::Job& stated, const answer::Answer& whole,
                               std::size_t& index, std::size_t run, bool named);

}  // namespace toft::request
