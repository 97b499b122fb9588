#include "diagram/wording.h"

#include "parts/words.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::diagram {

std::string range_words(const answer::FaultRange& range) {
    const bool kilo = range.largest >= 1000;
    const std::string smallest = significant(range.smallest / (kilo ? 1000 : 1), 3);
    const std::string largest = significant(range.largest / (kilo ? 1000 : 1), 3);
    const std::string unit = kilo ? " kA" : " A";
    if (smallest == largest) return largest + unit;
    return smallest + " to " + largest + unit;
}

std::string rating_words(const std::string& standard, const std::string& curve, double rating_a) {
    const std::string rating = significant(rating_a, 6);
    // The trip of a moulded-case breaker is set, not a letter.
    if (curve.empty() || standard == "BS EN 60947-2")
        return fmt::format("{} A {}", rating, standard);
    return fmt::format("{} A type {} {}", rating, curve, standard);
}

std::string residual_words(const answer::RcdAnswer& rcd) {
    return fmt::format("{} mA, type {}{}", significant(rcd.sensitivity_ma, 4), rcd.type,
                       rcd.delayed ? ", delayed" : "");
}

std::string leg_words(const site::Leg& leg) {
    std::string words = parts::length_words(leg.length) + " " + site::word(leg.method);
    if (leg.method == site::LegMethod::overhead) {
        if (leg.surface) words += " over " + site::word(*leg.surface);
        if (!leg.height.known) return words + ", height not known";
        return words + ", " + parts::length_words(leg.height) + " high";
    }
    if (!site::buried(leg.method)) return words;
    if (leg.surface) words += " under " + site::word(*leg.surface);
    if (!leg.depth.known) return words + ", depth not known";
    return words + ", " + parts::length_words(leg.depth) + " deep";
}

std::string supply_words(const site::Intake& intake) {
    const double u0 = intake.u0.number();
    if (intake.phases == 1) return "single-phase " + significant(u0, 4) + " V";
    return fmt::format("three-phase {}/{} V", significant(u0, 4),
                       significant(10 * std::round(u0 * std::sqrt(3.0) / 10), 4));
}

}  // namespace toft::diagram
