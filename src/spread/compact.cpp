#include "spread/compact.h"

#include "base/limit.h"

#include <algorithm>
#include <cmath>

namespace toft::spread {

namespace {

/// A power of two of which `most` is fewer than 2^51 times.
struct Grid {
    explicit Grid(double most) {
        int exponent = 0;
        std::frexp(most, &exponent);
        step = most > 0 ? std::ldexp(1.0, std::max(exponent - 50, -1000)) : 1;
    }
    double nearest(double x) const { return std::round(x / step) * step; }
    double below(double x) const { return std::floor(x / step) * step; }
    double step = 1;
};

struct Grids {
    std::vector<Grid> amounts;
    std::vector<double> most;  ///< no state is larger, on either side of 0
    Grid price{0};
};

std::vector<std::size_t> reading_order(const Problem& problem) {
    std::vector<std::vector<std::size_t>> children(problem.branches.size());
    std::vector<std::size_t> waiting;
    for (std::size_t b = problem.branches.size(); b-- > 0;) {
        const std::size_t parent = problem.branches[b].parent;
        (parent == from_root ? waiting : children[parent]).push_back(b);
    }
    std::vector<std::size_t> order;
    while (!waiting.empty()) {
        const std::size_t b = waiting.back();
        waiting.pop_back();
        order.push_back(b);
        waiting.insert(waiting.end(), children[b].begin(), children[b].end());
    }
    return order;
}

/// No state is larger, on either side of 0.
double most_state(const Problem& problem, std::size_t i, const std::vector<std::size_t>& order) {
    const double at_root = std::fabs(problem.at_root[i]);
    std::vector<double> sent(problem.branches.size());
    double most = at_root;
    for (const std::size_t b : order) {
        const Branch& branch = problem.branches[b];
        const double in = branch.parent == from_root ? at_root : sent[branch.parent];
        for (const Option& option : branch.options) {
            const Change& change = option.changes[i];
            sent[b] = std::max(sent[b], std::fabs(change.amount) + (change.sets ? 0 : in));
        }
        most = std::max(most, sent[b]);
    }
    return most;
}

Grids grids_of(const Problem& problem, const std::vector<std::size_t>& order) {
    Grids grids;
    for (std::size_t i = 0; i < problem.resources; ++i) {
        grids.most.push_back(2 * most_state(problem, i, order));
        grids.amounts.emplace_back(2 * grids.most.back());
    }
    double price = 0;
    for (const Branch& branch : problem.branches) {
        double most = 0;
        for (const Option& option : branch.options) most = std::max(most, option.price);
        price += most;
    }
    grids.price = Grid(price);
    return grids;
}

/// A limit with its tolerance, on the grid; infinite where no state reaches it.
double reckoned(double limit, const Grid& grid, double most) {
    if (limit > most) return no_limit;
    if (limit < -most) return -no_limit;
    return grid.below(limit + limit_tolerance * std::fabs(limit));
}

/// False when what it sets is more than it may leave.
bool read(Choice& choice, const Option& option, const Grids& grids) {
    choice.price = grids.price.nearest(option.price);
    for (std::size_t i = 0; i < grids.amounts.size(); ++i) {
        const Change& change = option.changes[i];
        const Grid& grid = grids.amounts[i];
        choice.sets[i] = change.sets;
        choice.amount[i] = grid.nearest(change.amount);
        choice.up[i] = reckoned(change.takes_at_most, grid, grids.most[i]);
        const double leaves = reckoned(change.leaves_at_most, grid, grids.most[i]);
        if (change.sets && choice.amount[i] > leaves) return false;
        if (!change.sets) choice.up[i] = std::min(choice.up[i], leaves - choice.amount[i]);
    }
    return true;
}

Compact laid_out(const Problem& problem) {
    const std::vector<std::size_t> order = reading_order(problem);
    const Grids grids = grids_of(problem, order);
    Compact compact;
    compact.resources = problem.resources;
    for (std::size_t i = 0; i < problem.resources; ++i) {
        compact.at_root[i] = grids.amounts[i].nearest(problem.at_root[i]);
    }
    std::vector<std::uint32_t> place(problem.branches.size(), none);
    for (const std::size_t b : order) {
        const Branch& branch = problem.branches[b];
        const auto t = static_cast<std::uint32_t>(compact.twigs.size());
        place[b] = t;
        Twig twig;
        twig.branch = b;
        twig.parent = branch.parent == from_root ? none : place[branch.parent];
        (twig.parent == none ? compact.roots : compact.twigs[twig.parent].children).push_back(t);
        for (std::size_t o = 0; o < branch.options.size(); ++o) {
            Choice choice;
            choice.option = static_cast<std::uint32_t>(o);
            if (read(choice, branch.options[o], grids)) twig.choices.push_back(choice);
        }
        compact.twigs.push_back(std::move(twig));
    }
    return compact;
}

/// What can arrive, from the root down; if asked, strikes choices for which too much always does.
void pass_down(Compact& compact, bool strike) {
    const std::size_t n = compact.resources;
    std::vector<Figures> low(compact.twigs.size());
    std::vector<Figures> high(compact.twigs.size());
    for (std::uint32_t t = 0; t < compact.twigs.size(); ++t) {
        Twig& twig = compact.twigs[t];
        twig.low = twig.parent == none ? compact.at_root : low[twig.parent];
        twig.high = twig.parent == none ? compact.at_root : high[twig.parent];
        low[t].fill(no_limit);
        high[t].fill(-no_limit);
        const auto dead = [&](const Choice& choice) {
            for (std::size_t i = 0; i < n; ++i) {
                if (twig.low[i] > choice.up[i]) return true;
            }
            return false;
        };
        auto& choices = twig.choices;
        if (strike) {
            choices.erase(std::remove_if(choices.begin(), choices.end(), dead), choices.end());
        }
        compact.impossible = compact.impossible || choices.empty();
        for (const Choice& choice : choices) {
            for (std::size_t i = 0; i < n; ++i) {
                const double in = choice.sets[i] ? 0 : twig.low[i];
                const double most = choice.sets[i] ? 0 : std::min(twig.high[i], choice.up[i]);
                low[t][i] = std::min(low[t][i], in + choice.amount[i]);
                high[t][i] = std::max(high[t][i], most + choice.amount[i]);
            }
        }
    }
}

/// What can be borne, from the ends up, each resource for itself. True when a choice changed.
bool pass_up(Compact& compact) {
    const std::size_t n = compact.resources;
    bool changed = false;
    Figures free;
    free.fill(no_limit);
    std::vector<Figures> borne(compact.twigs.size(), free);  // at the end of each
    for (std::size_t t = compact.twigs.size(); t-- > 0;) {
        Twig& twig = compact.twigs[t];
        twig.limits.fill(false);
        Figures most;
        most.fill(-no_limit);
        for (Choice& choice : twig.choices) {
            for (std::size_t i = 0; i < n; ++i) {
                const double below = borne[t][i];
                const double back = !choice.sets[i]             ? below - choice.amount[i]
                                    : choice.amount[i] <= below ? no_limit
                                                                : -no_limit;
                if (choice.up[i] < back && choice.up[i] < twig.high[i]) twig.limits[i] = true;
                if (back < choice.up[i]) {
                    choice.up[i] = back;
                    changed = true;
                }
                most[i] = std::max(most[i], choice.up[i]);
            }
        }
        for (std::size_t i = 0; i < n; ++i) {
            if (twig.parent == none) continue;
            double& at = borne[twig.parent][i];
            at = std::min(at, most[i]);
        }
    }
    return changed;
}

/// Siblings share what arrives: no more counts than the least that one of them bears, for what
/// feeds them was held to that by pass_up.
void share_high(Compact& compact, const std::vector<std::uint32_t>& siblings) {
    for (std::size_t i = 0; i < compact.resources; ++i) {
        double high = no_limit;
        for (const std::uint32_t t : siblings) {
            const Twig& twig = compact.twigs[t];
            double borne = -no_limit;
            for (const Choice& choice : twig.choices) borne = std::max(borne, choice.up[i]);
            high = std::min({high, twig.high[i], borne});
        }
        for (const std::uint32_t t : siblings) compact.twigs[t].high[i] = high;
    }
}

/// Takes `high` down to what is borne, and lifts limits that nothing reaches.
void settle(Compact& compact) {
    for (std::size_t t = 0; t < compact.twigs.size(); ++t) {
        share_high(compact, compact.twigs[t].children);
    }
    for (Twig& twig : compact.twigs) {
        for (Choice& choice : twig.choices) {
            for (std::size_t i = 0; i < compact.resources; ++i) {
                if (choice.up[i] >= twig.high[i]) choice.up[i] = no_limit;
            }
        }
    }
}

/// Whether `a` may stand wherever `b` does and comes before it by price, or by place at equal
/// price.
bool beats(const Choice& a, const Choice& b, const Twig& twig, std::size_t resources) {
    if (a.price > b.price || (a.price == b.price && a.option > b.option)) return false;
    for (std::size_t i = 0; i < resources; ++i) {
        if (a.up[i] < b.up[i]) return false;
        const double in = a.sets[i] == b.sets[i] ? 0 : a.sets[i] ? twig.low[i] : twig.high[i];
        const double a_out = a.amount[i] + (a.sets[i] ? 0 : in);
        const double b_out = b.amount[i] + (b.sets[i] ? 0 : in);
        if (a_out > b_out) return false;
    }
    return true;
}

void strike_beaten(Compact& compact) {
    for (Twig& twig : compact.twigs) {
        std::vector<Choice> left;
        for (const Choice& b : twig.choices) {
            const bool beaten = std::any_of(
                twig.choices.begin(), twig.choices.end(),
                [&](const Choice& a) { return &a != &b && beats(a, b, twig, compact.resources); });
            if (!beaten) left.push_back(b);
        }
        twig.choices = std::move(left);
    }
}

bool can_bind(const Compact& compact, std::size_t i) {
    for (const Twig& twig : compact.twigs) {
        for (const Choice& choice : twig.choices) {
            if (choice.up[i] < no_limit) return true;
        }
    }
    return false;
}

void move_resource(Compact& compact, std::size_t from, std::size_t to) {
    compact.at_root[to] = compact.at_root[from];
    for (Twig& twig : compact.twigs) {
        twig.limits[to] = twig.limits[from];
        twig.low[to] = twig.low[from];
        twig.high[to] = twig.high[from];
        for (Choice& choice : twig.choices) {
            choice.amount[to] = choice.amount[from];
            choice.up[to] = choice.up[from];
            choice.sets[to] = choice.sets[from];
        }
    }
}

}  // namespace

void narrow(Compact& compact) {
    for (int round = 0; round < 3; ++round) {
        pass_down(compact, true);
        if (compact.impossible) return;
        if (!pass_up(compact)) break;
    }
    pass_down(compact, false);
    settle(compact);
    strike_beaten(compact);
}

Compact compacted(const Problem& problem) {
    Compact compact = laid_out(problem);
    narrow(compact);
    if (compact.impossible) return compact;
    std::size_t kept = 0;
    for (std::size_t i = 0; i < compact.resources; ++i) {
        if (can_bind(compact, i)) move_resource(compact, i, kept++);
    }
    compact.resources = kept;
    return compact;
}

}  // namespace toft::spread
