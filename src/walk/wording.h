#pragma once
// Facts of the survey in words: the figure, or that nobody gave it.

#include "base/text.h"
#include "site/job.h"

#include <string>

namespace toft::walk {

/// "0.2 Ω, measured", "40 to 120 Ω m, assumed", "not stated".
template <class Q>
std::string fact_words(const site::Fact<Q>& fact, const std::string& unit) {
    if (!fact.known) return "not stated";
    const std::string low = significant(number_of(fact.low), 4);
    const std::string high = significant(number_of(fact.high), 4);
    return (fact.single() ? low : low + " to " + high) + (unit.empty() ? "" : " ") + unit + ", " +
           site::standing_word(fact.standing);
}

/// "wet floor: yes", "wet floor: not stated".
std::string answer_words(const char* what, site::Answer answer);

/// "use: greenhouse", "use: not stated".
std::string use_words(const site::Building& building);

/// "34 kΩ", "800 Ω".
std::string ohms_words(Ohms resistance);

}  // namespace toft::walk
