#pragma once
// The choices of all runs as a problem for the solver.

#include "spread/problem.h"
#include "tree/choices.h"

namespace toft::tree {

/// A choice that must not be made: one of a run's, or any of a run fed from a spare way.
struct Ban {
    std::size_t place = 0;
    std::optional<std::size_t> choice;  ///< none: any from a spare way
};

struct Posed {
    spread::Problem problem;
    /// By place, of each option the place of its choice.
    std::vector<std::vector<std::size_t>> choice_of;
};

/// Without what is banned or needs something bought once that is not in `bought`.
Posed posed(const Tree& tree, const std::vector<RunChoices>& choices, const std::vector<Ban>& bans,
            const std::vector<price::Item>& bought, Depth depth);

}  // namespace toft::tree
