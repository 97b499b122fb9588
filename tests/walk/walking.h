#pragma once
// The walk of the plain job's shed, or of a job like it, for tests to look into.

#include "support/catalogue.h"
#include "support/jobs.h"
#include "walk/walk.h"

#include <string>

namespace toft::walk {

inline Walk walked(const site::Job& job) { return walk(support::prepared(job)); }

/// The step of that key; null when the question does not come up.
inline const Step* find_step(const Walk& w, const std::string& key) {
    for (const Step& step : w.steps) {
        if (step.key == key) return &step;
    }
    return nullptr;
}

inline Bearing bearing_of(const Walk& w, const std::string& key, Choice choice) {
    const Step* step = find_step(w, key);
    return step ? step->ruling[choice].bearing : Bearing::neutral;
}

/// Where that choice stands; ruled out when the supply does not offer it.
inline Standing standing_of(const Walk& w, Choice choice) {
    for (const Way& way : w.ways) {
        if (way.choice == choice) return way.standing;
    }
    return Standing::ruled_out;
}

inline site::Job on_supply(site::Job job, site::Earthing system) {
    job.intake.earthing = system;
    if (system == site::Earthing::tt) job.intake.electrode = support::measured(ohms(60));
    return job;
}

inline site::Job shed_on(site::Earthing system) { return on_supply(support::plain_job(), system); }

/// The shed with a water pipe out of the ground, not bonded at the house, without an insulating
/// section.
inline site::Job with_pipe(site::ComesFrom from = site::ComesFrom::ground,
                           site::Answer bonded = site::Answer::no) {
    site::Job job = support::plain_job();
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.comes_from = from;
    pipe.insulating_section = site::Answer::no;
    pipe.bonded_at_house = bonded;
    job.buildings[1].metalwork = {pipe};
    return job;
}

inline bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace toft::walk
