#pragma once
// What is said of a place of several buildings as a whole: advice, lines, how each is earthed.

#include "special/advice.h"
#include "tree/follow.h"
#include "walk/walk.h"

#include <string>
#include <vector>

namespace toft::answer {

/// The runs of a job as built, and the way they are built; null where nothing sound was found.
struct WholePlace {
    const tree::Workplace& at;
    const tree::Tree& tree;
    const tree::Followed* way = nullptr;
};

/// The same advice to several buildings is given once, with their names unless it goes for all.
std::vector<special::Advice> advice_for(const WholePlace& place);

/// How lines were shared out; nothing where the supply has but one.
std::vector<std::string> about_lines(const site::Job& built);

/// How each building should be earthed, argued from what the way leaves at the board that feeds it;
/// without a way, for the runs from the house alone.
std::vector<walk::Walk> walks_for(const WholePlace& place);

}  // namespace toft::answer
