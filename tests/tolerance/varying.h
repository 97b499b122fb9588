#pragma once
// The plain job with ranges, and schemes for it.

#include "search/evaluate.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "tolerance/tolerance.h"

namespace toft::tolerance {

/// Only what the survey brackets varies.
inline Wish stated_only() {
    Wish wish;
    wish.as_stated = true;
    wish.samples = 8192;
    wish.pool = 512;
    return wish;
}

inline Place place_of(const site::Job& job) { return {support::catalogue(), job, study::RunAt{0}}; }

/// 4 mm2 of armoured cable behind a breaker of 25 A: long runs lose too much voltage on it.
inline study::RunScheme thin_scheme() {
    return support::scheme(support::cable(3, 4), study::Protective::core,
                           support::breaker("B", 25));
}

/// Every rule to be looked at.
inline std::array<bool, rules::rule_count> none_sure() { return {}; }

inline std::size_t number_of_rule(const std::string& name) {
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        if (name == rules::rulebook()[i].info->name) return i;
    }
    return rules::rule_count;
}

/// Whether that rule holds in the job, prepared from nothing; what merely cautions beyond its limit
/// holds no longer there.
inline bool holds(const site::Job& job, const study::RunScheme& scheme, const std::string& rule) {
    return search::surely_met(
        search::finding_of_one(support::prepared(job), scheme, number_of_rule(rule)));
}

inline site::Job of_length(site::Job job, double length) {
    job.runs[0].legs[0].length = support::measured(metres(length));
    return job;
}

}  // namespace toft::tolerance
