#pragma once
// A fact of the survey: a figure, how well it is known, or nothing at all.

#include "base/units.h"

namespace toft::site {

/// How a stated figure is known.
enum class Standing { measured, declared, assumed };

const char* standing_word(Standing standing);

/// How a figure is spread over its range: any part of it as likely as another of its width, or
/// gathered about the middle.
enum class Spread { even, bell };

/// A figure from `low` to `high` (equal when one figure was stated); not `known` when left out.
/// What is not known is never replaced here: whoever calculates takes the rulebook's range and says
/// so.
template <class Q>
struct Fact {
    bool known = false;
    Q low{};
    Q high{};
    Standing standing = Standing::measured;
    Spread spread = Spread::even;  ///< asked only where low and high differ

    bool single() const { return known && low == high; }

    friend bool operator==(const Fact&, const Fact&) = default;
};

/// A yes or no that may be unknown.
enum class Answer { unknown, no, yes };

}  // namespace toft::site
