#pragma once
// A scheme as words need it: what lies where, what stands at its head, how the far building is
// earthed. No figure is worked out.

#include "answer/answer.h"
#include "solve/solution.h"

#include <string>

namespace toft::answer {

/// What is built of the run; the residual current device at its head without a type.
RunAnswer outline_of(const study::Setting<Silent>& setting, const study::RunScheme& scheme);

/// How its building is earthed and switched and what is bonded there, each part asked to have the
/// least that any may.
BuildingAnswer building_outline(const study::Setting<Silent>& setting,
                                const study::RunScheme& scheme);

/// The scheme on one line, as short_words() says it.
std::string brief_words(const study::Setting<Silent>& setting, const study::RunScheme& scheme);

/// The cables of a run as an answer shows them: one entry a stretch, from the near end.
std::vector<StretchAnswer> stretches_of(const study::Setting<Silent>& setting,
                                        const study::RunScheme& scheme);

/// Name of the building that the run feeds, or its id.
std::string end_of_run(const site::Job& job, std::size_t run);

/// What is built of each run: "Garage: 2-core 16 mm², armour, …; Gym: …". Of more than a few runs
/// only how many there are.
std::string whole_words(const Question& question, const solve::Solution& solution);

/// What solutions are told against, and how that is called.
struct Against {
    const solve::Solution& solution;
    std::string called = "as it stands";
};

/// What of the (sound) solution is built otherwise than before: "Gym: 2-core 10 mm², …; all else
/// as it stands". `question` holds the job that it is a solution of; both have the same runs.
std::string changed_words(const Question& question, const solve::Solution& solution,
                          const Against& before);

/// Where a fact stands: the building's name, or which leg on the way to it; empty for what is of
/// the house, the ground or the whole.
std::string place_of_fact(const site::Job& job, const std::string& pointer);

}  // namespace toft::answer
