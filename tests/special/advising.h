#pragma once
// The advice for outbuildings, to look into.

#include "special/advice.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::special {

inline std::vector<Advice> advised(const site::Job& job) {
    const auto setting = support::prepared(job);
    return advice_of(case_of(setting));
}

/// The advice about that; fails the test where there is none.
inline Advice about(const site::Job& job, const std::string& what) {
    for (const Advice& advice : advised(job)) {
        if (advice.about == what) return advice;
    }
    ADD_FAILURE() << "no advice about " << what;
    return {};
}

inline bool advises(const site::Job& job, const std::string& what) {
    for (const Advice& advice : advised(job)) {
        if (advice.about == what) return true;
    }
    return false;
}

inline bool holds(const std::string& text, const char* words) {
    return text.find(words) != std::string::npos;
}

inline site::Job with_circuit(site::CircuitKind kind) {
    site::Job job = support::plain_job();
    site::Circuit c;
    c.name = "it";
    c.kind = kind;
    c.load_w = support::measured(2000.0);
    job.buildings[1].circuits = {c};
    return job;
}

}  // namespace toft::special
