#pragma once
// Which place is fed from which is a choice too: each node has one or more feeds, and just one of
// them is built, so that every node hangs on the root. Trees are looked at in the order of what
// they cost at least, each with the solver for one tree (spread/solve.h), until no other can be
// cheaper. Meant for some ten nodes with two or three feeds each. Page: docs/methods/spread.md.

#include "base/outcome.h"
#include "spread/problem.h"

namespace toft::spread {

/// A way to feed a node.
struct Feed {
    std::size_t from = from_root;  ///< a node, or the root
    std::vector<Option> options;
};

struct Node {
    std::vector<Feed> feeds;
};

/// A feed by its node and its place there.
struct FeedPlace {
    std::size_t node = 0;
    std::size_t feed = 0;
};

/// What several feeds share, such as a trench: paid once if any of them is built.
struct SharedCost {
    double price = 0;  ///< 0 or more, finite
    std::vector<FeedPlace> used_by;
};

struct Layout {
    std::size_t resources = 0;
    std::array<double, most_resources> at_root{};
    std::vector<Node> nodes;
    std::vector<SharedCost> shared;
};

/// Of equal prices the feeds that come first are taken, node by node as they stand.
struct LayoutAnswer {
    Standing standing = Standing::proved;
    std::vector<std::size_t> feeds;   ///< one for each node; empty if no tree was found
    std::vector<std::size_t> chosen;  ///< an option of each of these feeds
    double price = no_limit;          ///< with what is shared
    double at_least = 0;
    std::uint64_t offers = 0;
    std::uint64_t trees = 0;  ///< that were solved
};

Outcome<LayoutAnswer> solve(const Layout& layout, const Patience& patience = {});

/// The tree of these feeds, a branch for each node in the same order.
Problem tree_of(const Layout& layout, const std::vector<std::size_t>& feeds);

/// What is shared by these feeds, each paid once.
double shared_price(const Layout& layout, const std::vector<std::size_t>& feeds);

}  // namespace toft::spread
