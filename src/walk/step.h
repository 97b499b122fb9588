#pragma once
// A step of the walk. It is decided by a cheap function that allocates nothing and uses no words
// but fixed ones; the rule earthing-choice and the written walk both call it.

#include "walk/facts.h"

#include <string>
#include <vector>

namespace toft::walk {

/// What a step means for one choice, and why, in plain words.
struct Consequence {
    Bearing bearing = Bearing::neutral;
    const char* why = "";
};

/// A step decided.
struct Ruling {
    bool arises = true;  ///< false where the question does not come up
    Known known = Known::stated;
    ByChoice<Consequence> of{};

    Consequence& operator[](Choice choice) { return of[at(choice)]; }
    const Consequence& operator[](Choice choice) const { return of[at(choice)]; }
    /// The same for the supply's earth with and without an added electrode.
    void supply(Bearing bearing, const char* why) {
        of[at(Choice::supply_earth)] = of[at(Choice::added_electrode)] = {bearing, why};
    }
    void own(Bearing bearing, const char* why) { of[at(Choice::own_electrode)] = {bearing, why}; }
    void shared(Bearing bearing, const char* why) {
        of[at(Choice::shared_electrode)] = {bearing, why};
    }
};

/// A question that does not come up.
inline Ruling no_question() {
    Ruling r;
    r.arises = false;
    return r;
}

/// A question of the walk. `key` is also the row of rules/earthing_basis.csv that it stands on.
struct Question {
    const char* key;
    const char* asks;
    const char* rule;  ///< that judges schemes by it; empty when none does
    Ruling (*decide)(const Facts&);
    std::string (*found)(const Facts&);
    std::vector<std::string> (*would_change)(const Facts&, const Ruling&);
};

/// All questions but those of single metal parts, in the order in which they are asked.
const std::array<Question, 16>& questions();

}  // namespace toft::walk
