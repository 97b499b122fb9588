#pragma once
// One choice for each branch of a tree, so that what adds up along the way from the root keeps to
// its limits everywhere, at the least sum of prices. Pure values: what the resources are (voltage
// drop, loop impedance, heat) is the caller's affair. Page: docs/methods/spread.md.

#include <array>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <vector>

namespace toft::spread {

inline constexpr std::size_t most_resources = 8;
inline constexpr std::size_t from_root = static_cast<std::size_t>(-1);
inline constexpr double no_limit = std::numeric_limits<double>::infinity();

/// What an option does to one resource: out = in + amount, or, if it sets, out = amount whatever
/// came in. Limits are met as base/limit.h has it.
struct Change {
    double amount = 0;  ///< finite; may be negative
    bool sets = false;
    double takes_at_most = no_limit;   ///< works only if what comes in is no more
    double leaves_at_most = no_limit;  ///< works only if what goes out is no more
};

/// One way to build a branch.
struct Option {
    double price = 0;  ///< 0 or more, finite
    std::array<Change, most_resources> changes{};
    /// Only floors look at these two (spread/frontier.h).
    int grade = 0;
    double headroom = no_limit;
};

/// Leads from the end of another branch, or from the root, to a node of its own.
struct Branch {
    std::size_t parent = from_root;  ///< place in `branches`, in any order
    std::vector<Option> options;
};

struct Problem {
    std::size_t resources = 0;                     ///< of `changes`, how many are looked at
    std::array<double, most_resources> at_root{};  ///< what every branch from the root takes in
    std::vector<Branch> branches;
};

enum class Standing {
    proved,     ///< nothing is cheaper
    stopped,    ///< the best found before the caller stopped; something cheaper may exist
    impossible  ///< proved that no choice keeps all limits
};

/// Of choices of equal price (on the grid of spread/compact.h) the first is taken, read from the
/// root: a branch before what it feeds, all behind it before the next sibling, siblings as they
/// stand in the problem.
struct Answer {
    Standing standing = Standing::proved;
    std::vector<std::size_t> chosen;  ///< an option for each branch; empty if none was found
    double price = no_limit;          ///< of what is chosen
    double at_least = 0;              ///< no choice that keeps all limits costs less
    std::uint64_t offers = 0;         ///< partial choices looked at
};

struct Progress {
    std::uint64_t offers = 0;
    double price = no_limit;  ///< of the best found so far
    double at_least = 0;
};

/// When to give up before the proof. Unless set, never.
struct Patience {
    std::uint64_t most_offers = std::numeric_limits<std::uint64_t>::max();
    std::function<bool(const Progress&)> go_on;  ///< asked now and then; false stops
};

}  // namespace toft::spread
