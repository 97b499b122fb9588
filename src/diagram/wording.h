#pragma once
// Figures in words as the diagram writes them.

#include "answer/answer.h"
#include "base/text.h"
#include "site/fact.h"
#include "site/job.h"

#include <string>

namespace toft::diagram {

inline double number_of(double x) { return x; }
template <class Q>
double number_of(const Q& x) {
    return x.number();
}

/// "0.21 Ω", "0.2 to 0.3 Ω, assumed", "not known".
template <class Q>
std::string fact_words(const site::Fact<Q>& fact, const std::string& unit, double scale = 1) {
    if (!fact.known) return "not known";
    std::string words;
    if (!fact.single()) words = significant(number_of(fact.low) * scale, 3) + " to ";
    words += significant(number_of(fact.high) * scale, 3) + " " + unit;
    if (fact.standing == site::Standing::measured) return words;
    return words + ", " + site::standing_word(fact.standing);
}

/// "0.569 to 1.07 kA", "215 to 570 A", "610 A".
std::string range_words(const answer::FaultRange& range);

/// "32 A type B BS EN 60898", "80 A BS 88-3".
std::string rating_words(const std::string& standard, const std::string& curve, double rating_a);

/// "30 mA, type A, delayed".
std::string residual_words(const answer::RcdAnswer& rcd);

/// "21 m buried direct under lawn, 0.6 m deep".
std::string leg_words(const site::Leg& leg);

/// "single-phase 230 V", "three-phase 230/400 V".
std::string supply_words(const site::Intake& intake);

}  // namespace toft::diagram
