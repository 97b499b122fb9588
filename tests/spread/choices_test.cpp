#include "spread/choices.h"

#include "spread/check.h"
#include "spread/solve.h"
#include "support/spread_draws.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::spread {
namespace {

Option cable(double price, double amount, double leaves_at_most = no_limit) {
    Option o;
    o.price = price;
    o.changes[0] = {amount, false, no_limit, leaves_at_most};
    return o;
}

/// Each node of a drawn tree gets more feeds, from the root or from any other node.
Layout drawn_layout(unsigned seed) {
    const Problem problem = support::drawn({seed, 4, 3, 2});
    const Problem other = support::drawn({seed + 1, 12, 3, 2});
    Layout layout{2, problem.at_root, {}, {}};
    for (std::size_t n = 0; n < 4; ++n) {
        Node node{{{problem.branches[n].parent, problem.branches[n].options}}};
        for (std::size_t f = 0; f < (seed + n) % 3; ++f) {
            const std::size_t from = (seed / 7 + n + 2 * f) % 5;
            node.feeds.push_back(
                {from == 4 || from == n ? from_root : from, other.branches[3 * n + f].options});
        }
        layout.nodes.push_back(node);
    }
    layout.shared.push_back({1.5, {{0, 0}, {1, 0}, {2, layout.nodes[2].feeds.size() - 1}}});
    return layout;
}

struct BestTree {
    std::vector<std::size_t> feeds;
    double price = no_limit;
};

BestTree try_all_trees(const Layout& layout) {
    BestTree best;
    std::vector<std::size_t> feeds(layout.nodes.size(), 0);
    while (true) {
        const Problem tree = tree_of(layout, feeds);
        if (faults_of(tree).empty()) {
            const double price = support::try_all(tree).price + shared_price(layout, feeds);
            if (price < best.price) best = {feeds, price};
        }
        std::size_t n = feeds.size();
        while (n > 0 && ++feeds[n - 1] == layout.nodes[n - 1].feeds.size()) feeds[--n] = 0;
        if (n == 0) return best;
    }
}

RC_GTEST_PROP(ChoicesLaw, FindsTheTreeThatThePlainLoopFinds, ()) {
    const unsigned seed = *rc::gen::inRange(0U, 4000000000U);
    for (unsigned n = 0; n < 10; ++n) {
        const Layout layout = drawn_layout(seed + n);
        const BestTree plain = try_all_trees(layout);
        const auto answer = solve(layout);
        RC_ASSERT(answer.has_value());
        RC_ASSERT(answer->price == plain.price);
        RC_ASSERT(answer->at_least == plain.price);
        RC_ASSERT(answer->feeds == plain.feeds);
        RC_ASSERT((answer->standing == Standing::impossible) == plain.feeds.empty());
        if (plain.feeds.empty()) continue;
        RC_ASSERT(keeps_limits(tree_of(layout, answer->feeds), answer->chosen));
    }
}

TEST(Choices, AFarShedIsFedFromItsNeighbourInTheSameTrench) {
    // Straight from the house the far shed needs its own trench; by way of the garage only cable.
    Layout layout{1, {}, {}, {}};
    layout.nodes.push_back({{{from_root, {cable(50, 1, 5), cable(20, 3, 5)}}}});
    layout.nodes.push_back({{{from_root, {cable(60, 2, 5)}}, {0, {cable(30, 3, 5)}}}});
    layout.shared.push_back({100, {{0, 0}, {1, 1}}});
    layout.shared.push_back({100, {{1, 0}}});
    const auto answer = solve(layout);
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->feeds, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(answer->chosen, (std::vector<std::size_t>{0, 0}));
    EXPECT_EQ(answer->price, 180);
}

TEST(Choices, TwoThatCouldFeedEachOtherDoNotBoth) {
    Layout layout{1, {}, {}, {}};
    layout.nodes.push_back({{{1, {cable(1, 1)}}, {from_root, {cable(50, 1)}}}});
    layout.nodes.push_back({{{0, {cable(1, 1)}}, {from_root, {cable(40, 1)}}}});
    const auto answer = solve(layout);
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->feeds, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(answer->price, 41);
}

TEST(Choices, FaultsAreSaidWithTheirPlace) {
    Layout layout{1, {}, {{{{from_root, {cable(1, 1)}}, {9, {cable(-1, 1)}}}}, {}}, {}};
    layout.shared.push_back({1, {{0, 5}}});
    const auto answer = solve(layout);
    ASSERT_FALSE(answer);
    std::vector<std::string> places;
    for (const Fault& fault : answer.error()) places.push_back(fault.pointer);
    EXPECT_EQ(places, (std::vector<std::string>{"/nodes/0/feeds/1/from", "/nodes/1/feeds",
                                                "/nodes/0/feeds/1/options/0", "/shared/0"}));
}

TEST(Choices, WhoStopsIsToldABound) {
    Patience patience;
    patience.most_offers = 0;
    Layout layout{1, {}, {}, {}};
    layout.nodes.push_back({{{from_root, {cable(7, 3, 5), cable(9, 1, 5)}}}});
    layout.nodes.push_back({{{0, {cable(7, 3, 5), cable(9, 2, 5)}}}});
    const auto answer = solve(layout, patience);
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->standing, Standing::stopped);
    EXPECT_EQ(answer->at_least, 14);
    EXPECT_EQ(solve(layout)->price, 16);
}

}  // namespace
}  // namespace toft::spread
