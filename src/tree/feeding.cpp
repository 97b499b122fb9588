#include "tree/feeding.h"

#include "site/built.h"
#include "tree/least_alone.h"

#include <algorithm>
#include <map>
#include <queue>

namespace toft::tree {

namespace {

using Runs = std::vector<std::size_t>;

/// Which runs lead to each building, by where they stand in the job.
struct Nodes {
    std::vector<std::string> ids;
    std::vector<Runs> feeds;

    std::size_t count() const { return ids.size(); }
};

Nodes nodes_of(const site::Job& job) {
    Nodes nodes;
    for (const site::Building& b : job.buildings) {
        if (b.origin) continue;
        nodes.ids.push_back(b.id);
        nodes.feeds.emplace_back();
        for (std::size_t run = 0; run < job.runs.size(); ++run) {
            if (job.runs[run].to == b.id) nodes.feeds.back().push_back(run);
        }
    }
    return nodes;
}

/// For each run the node it leaves; the count of nodes where it leaves the house.
std::vector<std::size_t> starts_of(const site::Job& job, const Nodes& nodes) {
    std::vector<std::size_t> starts;
    for (const site::Run& run : job.runs) {
        const auto at = std::find(nodes.ids.begin(), nodes.ids.end(), run.from);
        starts.push_back(static_cast<std::size_t>(at - nodes.ids.begin()));
    }
    return starts;
}

/// Whether the last of the runs chosen for the first nodes closes a circle.
bool closes_circle(const Runs& chosen, const std::vector<std::size_t>& starts) {
    if (chosen.empty()) return false;
    const std::size_t last = chosen.size() - 1;
    std::size_t at = last;
    do {
        at = starts[chosen[at]];
    } while (at != last && at < chosen.size());
    return at == last;
}

/// What trees cost at least.
class Bounds {
public:
    explicit Bounds(const Workplace& at) {
        for (std::size_t run = 0; run < at.job.runs.size(); ++run) {
            alone_.push_back(least_alone(at, run));
        }
        never_less_than_longer();
    }

    double alone(std::size_t run) const { return alone_[run].price; }

    /// Each trench is dug once, for the longest that lies in it.
    double digging(const Runs& runs) const {
        std::map<std::string, const Dig*> longest;
        for (const std::size_t run : runs) {
            for (const Dig& dig : alone_[run].digs) {
                const Dig*& most = longest[dig.trench];
                if (!most || most->length < dig.length) most = &dig;
            }
        }
        double sum = 0;
        for (const auto& trench : longest) sum += trench.second->price;
        return sum;
    }

private:
    /// Where lengths are open, the longest at most need not be the longest: a run still to be
    /// chosen may then be dug for at less.
    void never_less_than_longer() {
        const std::vector<LeastAlone> stated = alone_;
        for (LeastAlone& own : alone_) {
            for (Dig& dig : own.digs) {
                for (const LeastAlone& other : stated) {
                    for (const Dig& longer : other.digs) {
                        const bool may_pay =
                            longer.trench == dig.trench && !(longer.length < dig.length);
                        if (may_pay) dig.price = std::min(dig.price, longer.price);
                    }
                }
            }
        }
    }

    std::vector<LeastAlone> alone_;
};

/// Some nodes with their runs decided, the first ones.
struct Beginning {
    double at_least = 0;
    Runs chosen;

    bool operator<(const Beginning& other) const {  // the queue gives its largest first
        if (at_least != other.at_least) return at_least > other.at_least;
        return chosen > other.chosen;
    }
};

struct Found {
    std::optional<Runs> way;  ///< by node
    double total = no_limit;
    double at_least = no_limit;
    double doubtful = no_limit;  ///< no tree of which it is not proved costs less
    bool proved = true;
};

class FeedingSearch {
public:
    FeedingSearch(const Workplace& at, const Asked& asked, const FeedingLimits& limits)
        : at_(at),
          asked_(asked),
          limits_(limits),
          nodes_(nodes_of(at.job)),
          starts_(starts_of(at.job, nodes_)),
          bounds_(at) {}

    Feedings search() {
        const Found best = cheapest(nodes_.feeds, limits_.most_trees);
        out_.proved = best.proved;
        out_.at_least = best.at_least;
        if (best.way) {
            add_way(*best.way);
            look_at_others(*best.way);
            put_in_order();
        }
        out_.trees = static_cast<long>(known_.size());
        out_.stopped = stopped_;
        return std::move(out_);
    }

private:
    struct Known {
        Best best;
        double below = 0;  ///< it was asked for ways below this
    };

    /// The cheapest tree of those runs.
    Found cheapest(const std::vector<Runs>& feeds, long most_trees) {
        Found found = known_among(feeds);
        std::priority_queue<Beginning> open;
        push(open, feeds, {});
        long solved = 0;
        while (!open.empty()) {
            const Beginning at = open.top();
            if (at.at_least >= found.total - penny_part) break;
            const auto waiting = static_cast<long>(open.size());
            if (solved >= most_trees || waiting > limits_.most_open || stopped_) {
                found.doubtful = std::min(found.doubtful, at.at_least);
                break;
            }
            open.pop();
            if (at.chosen.size() < nodes_.count()) {
                for (const std::size_t run : feeds[at.chosen.size()]) {
                    Runs chosen = at.chosen;
                    chosen.push_back(run);
                    push(open, feeds, std::move(chosen));
                }
                continue;
            }
            ++solved;
            take(at, found);
        }
        found.proved = found.doubtful >= found.total - penny_part && !stopped_;
        if (found.total == no_limit) found.proved = found.doubtful == no_limit && !stopped_;
        found.at_least = std::min({found.at_least, found.doubtful, found.total});
        return found;
    }

    /// What earlier questions have found, to be beaten.
    Found known_among(const std::vector<Runs>& feeds) const {
        Found found;
        for (const auto& [runs, known] : known_) {
            if (!known.best.found || known.best.found->total >= found.total) continue;
            bool fits = true;
            for (std::size_t n = 0; n < runs.size(); ++n) {
                fits = fits && std::count(feeds[n].begin(), feeds[n].end(), runs[n]) > 0;
            }
            if (!fits) continue;
            found.way = runs;
            found.total = known.best.found->total;
        }
        return found;
    }

    void push(std::priority_queue<Beginning>& open, const std::vector<Runs>& feeds, Runs chosen) {
        if (closes_circle(chosen, starts_)) return;
        double least = bounds_.digging(chosen);
        for (std::size_t n = 0; n < nodes_.count(); ++n) {
            double one = no_limit;
            if (n < chosen.size()) {
                one = bounds_.alone(chosen[n]);
            } else {
                for (const std::size_t run : feeds[n]) one = std::min(one, bounds_.alone(run));
            }
            least += one;
        }
        if (least < no_limit) open.push({least, std::move(chosen)});
    }

    void take(const Beginning& at, Found& found) {
        const Best& best = solved(at.chosen, found.total);
        if (best.found && best.found->total < found.total) {
            found.way = at.chosen;
            found.total = best.found->total;
        }
        if (best.proved) {
            found.at_least = std::min(found.at_least, best.at_least);
        } else {
            const double least = best.found ? best.at_least : at.at_least;
            found.doubtful = std::min(found.doubtful, std::max(least, at.at_least));
        }
    }

    const Best& solved(const Runs& chosen, double below) {
        Known& known = known_[chosen];
        const bool none = known.best.proved && known.best.at_least >= below - penny_part;
        const bool told = known.best.found || known.below >= below || none;
        if (told) return known.best;
        const site::Job job = built(chosen);
        const Workplace here{at_.catalogue, at_.book, job, at_.corner, at_.memo};
        Asked asked = asked_;
        asked.below = std::min(asked_.below, below);
        asked.go_on = [this](const Progress& progress) {
            if (asked_.go_on && !asked_.go_on(progress)) stopped_ = true;
            return !stopped_;
        };
        known.best = tree::cheapest(here, tree_of(here), asked);
        known.below = below;
        out_.considered += known.best.considered;
        out_.choices_of_runs += known.best.choices;
        out_.rounds += known.best.rounds;
        return known.best;
    }

    site::Job built(const Runs& chosen) const { return site::as_built(at_.job, chosen); }

    /// Place of that tree among the ways to show; of a new one at their end.
    std::size_t add_way(const Runs& chosen) {
        Runs rising = chosen;
        std::sort(rising.begin(), rising.end());
        for (std::size_t i = 0; i < out_.ways.size(); ++i) {
            if (out_.ways[i].runs == rising) return i;
        }
        out_.ways.push_back({std::move(rising), built(chosen), known_[chosen].best});
        return out_.ways.size() - 1;
    }

    void look_at_others(const Runs& best) {
        for (std::size_t n = 0; n < nodes_.count(); ++n) {
            if (nodes_.feeds[n].size() < 2) continue;
            FeedChoice choice{nodes_.ids[n], best[n], {}};
            for (const std::size_t run : nodes_.feeds[n]) {
                if (run == best[n]) continue;
                std::vector<Runs> feeds = nodes_.feeds;
                feeds[n] = {run};
                choice.others.push_back(other(feeds, run));
            }
            out_.choices.push_back(std::move(choice));
        }
        each_from_the_house();
    }

    OtherFeed other(const std::vector<Runs>& feeds, std::size_t run) {
        const Found found = cheapest(feeds, limits_.most_others);
        OtherFeed other{run, found.at_least, found.proved, 0, found.way.has_value()};
        if (found.way) other.way = add_way(*found.way);
        return other;
    }

    void each_from_the_house() {
        std::vector<Runs> feeds = nodes_.feeds;
        for (Runs& of_node : feeds) {
            of_node.erase(
                std::remove_if(of_node.begin(), of_node.end(),
                               [&](std::size_t run) { return starts_[run] != nodes_.count(); }),
                of_node.end());
            if (of_node.empty()) return;
        }
        const Found found = cheapest(feeds, limits_.most_others);
        if (found.way) add_way(*found.way);
    }

    void put_in_order() {
        std::vector<std::size_t> order(out_.ways.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        const auto total = [&](std::size_t i) { return out_.ways[i].best.found->total; };
        std::stable_sort(order.begin() + 1, order.end(),
                         [&](std::size_t a, std::size_t b) { return total(a) < total(b); });
        std::vector<Feeding> ways;
        std::vector<std::size_t> now(order.size());
        for (std::size_t i = 0; i < order.size(); ++i) {
            now[order[i]] = i;
            ways.push_back(std::move(out_.ways[order[i]]));
        }
        out_.ways = std::move(ways);
        for (FeedChoice& choice : out_.choices) {
            for (OtherFeed& other : choice.others) other.way = now[other.way];
        }
    }

    const Workplace& at_;
    const Asked& asked_;
    const FeedingLimits& limits_;
    Nodes nodes_;
    std::vector<std::size_t> starts_;
    Bounds bounds_;
    std::map<Runs, Known> known_;  ///< by node
    bool stopped_ = false;
    Feedings out_;
};

void add_trees(const Nodes& nodes, const std::vector<std::size_t>& starts, std::size_t most,
               Runs& chosen, std::vector<Runs>& trees) {
    if (trees.size() >= most || closes_circle(chosen, starts)) return;
    if (chosen.size() == nodes.count()) {
        trees.push_back(chosen);
        std::sort(trees.back().begin(), trees.back().end());
        return;
    }
    for (const std::size_t run : nodes.feeds[chosen.size()]) {
        chosen.push_back(run);
        add_trees(nodes, starts, most, chosen, trees);
        chosen.pop_back();
    }
}

}  // namespace

Feedings feedings(const Workplace& at, const Asked& asked, const FeedingLimits& limits) {
    return FeedingSearch(at, asked, limits).search();
}

std::vector<Runs> all_trees(const site::Job& job, std::size_t most) {
    const Nodes nodes = nodes_of(job);
    const std::vector<std::size_t> starts = starts_of(job, nodes);
    std::vector<Runs> trees;
    Runs chosen;
    add_trees(nodes, starts, most, chosen, trees);
    return trees;
}

}  // namespace toft::tree
