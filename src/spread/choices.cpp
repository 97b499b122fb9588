#include "spread/choices.h"

#include "base/limit.h"
#include "spread/check.h"
#include "spread/solve.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <queue>

namespace toft::spread {

namespace {

void look_at_feeds(const Layout& layout, Faults& faults) {
    Problem fan{layout.resources, layout.at_root, {}};
    std::vector<std::string> places;
    for (std::size_t n = 0; n < layout.nodes.size(); ++n) {
        const auto& feeds = layout.nodes[n].feeds;
        const std::string node = fmt::format("/nodes/{}/feeds", n);
        if (feeds.empty()) {
            faults.push_back({"missing", node, "A node needs at least one feed.", "", {}});
        }
        for (std::size_t f = 0; f < feeds.size(); ++f) {
            fan.branches.push_back({from_root, feeds[f].options});
            places.push_back(fmt::format("{}/{}", node, f));
            if (feeds[f].from == from_root || feeds[f].from < layout.nodes.size()) continue;
            faults.push_back({"unknown-reference",
                              places.back() + "/from",
                              "There is no such node; name one of them or the root.",
                              "",
                              {}});
        }
    }
    for (Fault fault : faults_of(fan)) {
        for (std::size_t b = places.size(); b-- > 0;) {
            const std::string branch = fmt::format("/branches/{}/", b);
            if (fault.pointer.rfind(branch, 0) != 0) continue;
            fault.pointer = places[b] + fault.pointer.substr(branch.size() - 1);
            break;
        }
        faults.push_back(std::move(fault));
    }
}

Faults faults_in_layout(const Layout& layout) {
    Faults faults;
    look_at_feeds(layout, faults);
    for (std::size_t s = 0; s < layout.shared.size(); ++s) {
        const std::string place = fmt::format("/shared/{}", s);
        const double price = layout.shared[s].price;
        if (!(price >= 0 && std::isfinite(price))) {
            faults.push_back(
                {"out-of-range", place, "A price must be finite and at least 0.", "", {}});
        }
        for (const FeedPlace& user : layout.shared[s].used_by) {
            if (user.node < layout.nodes.size() &&
                user.feed < layout.nodes[user.node].feeds.size()) {
                continue;
            }
            faults.push_back({"unknown-reference", place, "There is no such feed.", "", {}});
        }
    }
    return faults;
}

/// The least of each resource that any tree can bring to a node, each for itself; from walks, which
/// may pass a node twice, so perhaps less than any tree.
std::vector<std::array<double, most_resources>> least_arriving(const Layout& layout) {
    std::array<double, most_resources> never;
    never.fill(no_limit);
    std::vector<std::array<double, most_resources>> least(layout.nodes.size(), never);
    for (std::size_t round = 0; round < layout.nodes.size(); ++round) {
        for (std::size_t n = 0; n < layout.nodes.size(); ++n) {
            for (const Feed& feed : layout.nodes[n].feeds) {
                const auto in = feed.from == from_root ? layout.at_root : least[feed.from];
                for (const Option& option : feed.options) {
                    for (std::size_t i = 0; i < layout.resources; ++i) {
                        const Change& change = option.changes[i];
                        const double out = change.amount + (change.sets ? 0 : in[i]);
                        least[n][i] = std::min(least[n][i], out);
                    }
                }
            }
        }
    }
    return least;
}

/// The cheapest option of a feed that the least of every resource would let work.
double cheapest_of(const Feed& feed, const std::array<double, most_resources>& in,
                   std::size_t resources) {
    double cheapest = no_limit;
    for (const Option& option : feed.options) {
        bool works = true;
        for (std::size_t i = 0; i < resources; ++i) {
            const Change& change = option.changes[i];
            const double out = change.amount + (change.sets ? 0 : in[i]);
            // A few last bits on the safe side: only a bound is made of it.
            const double slack = 1e-9 * (std::fabs(in[i]) + std::fabs(change.amount));
            works = works && within(in[i] - slack, change.takes_at_most) &&
                    within(out - slack, change.leaves_at_most);
        }
        if (works) cheapest = std::min(cheapest, option.price);
    }
    return cheapest;
}

/// Some nodes with their feeds decided, the first ones.
struct Partial {
    double least = 0;  ///< no tree with these feeds costs less
    std::vector<std::size_t> feeds;

    bool operator<(const Partial& other) const {  // the queue gives its largest first
        return least != other.least ? least > other.least : feeds > other.feeds;
    }
};

class Layouts {
public:
    Layouts(const Layout& layout, const Patience& patience) : layout_(layout), patience_(patience) {
        const auto least = least_arriving(layout);
        for (const Node& node : layout.nodes) {
            std::vector<double> prices;
            for (const Feed& feed : node.feeds) {
                const auto& in = feed.from == from_root ? layout.at_root : least[feed.from];
                prices.push_back(cheapest_of(feed, in, layout.resources));
            }
            cheapest_.push_back(std::move(prices));
        }
    }

    LayoutAnswer run() {
        std::priority_queue<Partial> open;
        push(open, {});
        while (!open.empty()) {
            const Partial at = open.top();
            open.pop();
            if (at.least > best_.price * (1 + limit_tolerance)) break;
            best_.at_least = std::min(at.least, best_.price);
            if (at.feeds.size() == layout_.nodes.size()) {
                if (!take(at.feeds)) return stopped();
                continue;
            }
            for (std::size_t f = 0; f < layout_.nodes[at.feeds.size()].feeds.size(); ++f) {
                auto feeds = at.feeds;
                feeds.push_back(f);
                push(open, std::move(feeds));
            }
        }
        best_.standing = best_.price < no_limit ? Standing::proved : Standing::impossible;
        best_.at_least = best_.price;
        return best_;
    }

private:
    void push(std::priority_queue<Partial>& open, std::vector<std::size_t> feeds) const {
        if (has_cycle(feeds)) return;
        double least = shared_price(layout_, feeds);
        for (std::size_t n = 0; n < layout_.nodes.size(); ++n) {
            const auto& prices = cheapest_[n];
            least += n < feeds.size() ? prices[feeds[n]]
                                      : *std::min_element(prices.begin(), prices.end());
        }
        if (least < no_limit) open.push({least, std::move(feeds)});
    }

    bool has_cycle(const std::vector<std::size_t>& feeds) const {
        if (feeds.empty()) return false;
        const std::size_t last = feeds.size() - 1;
        std::size_t at = last;
        do {
            at = layout_.nodes[at].feeds[feeds[at]].from;
        } while (at != last && at != from_root && at < feeds.size());
        return at == last;
    }

    /// False when the caller stopped.
    bool take(const std::vector<std::size_t>& feeds) {
        Patience left = patience_;
        left.most_offers -= std::min(left.most_offers, best_.offers);
        if (patience_.go_on) {
            left.go_on = [this](const Progress& progress) {
                return patience_.go_on(
                    {best_.offers + progress.offers, best_.price, best_.at_least});
            };
        }
        const Outcome<Answer> answer = solve(tree_of(layout_, feeds), left);
        best_.offers += answer->offers;
        ++best_.trees;
        const double price = answer->price + shared_price(layout_, feeds);
        const bool first = price == best_.price && feeds < best_.feeds;
        if (!answer->chosen.empty() && (price < best_.price || first)) {
            best_.price = price;
            best_.feeds = feeds;
            best_.chosen = answer->chosen;
        }
        return answer->standing != Standing::stopped;
    }

    LayoutAnswer stopped() {
        best_.standing = Standing::stopped;
        best_.at_least = std::min(best_.at_least, best_.price);
        return best_;
    }

    const Layout& layout_;
    const Patience& patience_;
    std::vector<std::vector<double>> cheapest_;
    LayoutAnswer best_;
};

}  // namespace

Outcome<LayoutAnswer> solve(const Layout& layout, const Patience& patience) {
    Faults faults = faults_in_layout(layout);
    if (!faults.empty()) return failed(std::move(faults));
    return Layouts(layout, patience).run();
}

Problem tree_of(const Layout& layout, const std::vector<std::size_t>& feeds) {
    Problem problem{layout.resources, layout.at_root, {}};
    for (std::size_t n = 0; n < feeds.size(); ++n) {
        const Feed& feed = layout.nodes[n].feeds[feeds[n]];
        problem.branches.push_back({feed.from, feed.options});
    }
    return problem;
}

double shared_price(const Layout& layout, const std::vector<std::size_t>& feeds) {
    double sum = 0;
    for (const SharedCost& cost : layout.shared) {
        const bool used =
            std::any_of(cost.used_by.begin(), cost.used_by.end(), [&](const FeedPlace& user) {
                return user.node < feeds.size() && feeds[user.node] == user.feed;
            });
        if (used) sum += cost.price;
    }
    return sum;
}

}  // namespace toft::spread
