#pragma once
// A problem made ready: branches in the order in which they are read from the root, figures on a
// grid on which sums are exact, only options that can still work, only resources that can bind.
//
// The grid of a resource is a power of two so fine that any sum of its amounts is a multiple of it
// with fewer than 53 bits. So a sum is the same in whatever order it is made, and a requirement
// reckoned back from a limit says exactly what adding up from the root would say. An amount is
// moved by at most 2^-48 of the largest sum along any way, a price by 2^-50 of the sum of prices;
// the tolerance of base/limit.h is added to limits before they are rounded down.

#include "spread/problem.h"

#include <cstdint>
#include <vector>

namespace toft::spread {

inline constexpr std::uint32_t none = static_cast<std::uint32_t>(-1);

using Figures = std::array<double, most_resources>;

/// An option that may work. It works just when what arrives is at most `up` in every resource.
struct Choice {
    double price = 0;
    Figures amount{};
    Figures up{};  ///< infinite where nothing that can arrive is too much
    std::array<bool, most_resources> sets{};
    std::uint32_t option = 0;  ///< place in the caller's list
};

struct Twig {
    std::uint32_t parent = none;  ///< place in `twigs`, before this one
    std::size_t branch = 0;       ///< place in the problem
    std::vector<std::uint32_t> children;
    std::vector<Choice> choices;  ///< in the caller's order
    Figures low{};                ///< least that can arrive
    Figures high{};               ///< most that can arrive and still be borne
    /// Whether a limit of its own may bind, rather than only those of what it feeds.
    std::array<bool, most_resources> limits{};
};

struct Compact {
    std::size_t resources = 0;  ///< those that can bind
    Figures at_root{};
    std::vector<std::uint32_t> roots;
    std::vector<Twig> twigs;  ///< a branch, then all behind it, then its next sibling
    bool impossible = false;  ///< some branch is left without a choice
    /// Branches that are settled and no longer in `twigs`, each with its option.
    std::vector<std::pair<std::size_t, std::uint32_t>> settled;
    double settled_price = 0;

    /// Which of a node are fed from it; `none` is the root.
    const std::vector<std::uint32_t>& fed_from(std::uint32_t node) const {
        return node == none ? roots : twigs[node].children;
    }
};

/// Strikes choices that cannot work or are beaten, and sets `low`, `high` and `limits` anew from
/// what is left.
void narrow(Compact& compact);

/// The problem must have no faults (spread/check.h).
Compact compacted(const Problem& problem);

}  // namespace toft::spread
