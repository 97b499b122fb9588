#include "support/spread_draws.h"

#include "spread/solve.h"
#include "support/catalogue.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace toft::support {

namespace {

using namespace spread;

/// The standard engine is the same everywhere; its distributions are not.
struct SpreadDice {
    std::mt19937 engine;

    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(engine()) / 4294967296.0;
    }
    std::size_t below(std::size_t n) { return engine() % n; }
    bool once_in(std::size_t n) { return below(n) == 0; }
    double whole(int low, int high) {
        return low + static_cast<double>(below(static_cast<std::size_t>(high - low + 1)));
    }
};

Change drawn_change(SpreadDice& dice, const DrawnSpread& asked) {
    Change change;
    change.sets = asked.mixed && dice.once_in(7);
    change.amount = asked.grain * dice.whole(asked.mixed ? -3 : 0, 9);
    if (dice.once_in(6)) change.takes_at_most = asked.grain * dice.whole(-2, 24);
    if (!dice.once_in(3)) change.leaves_at_most = asked.grain * dice.whole(0, 28);
    return change;
}

/// What is sent out at each branch when each takes its option at `end` (0: first, 1: last).
double most_sent(const Problem& problem, std::size_t resource, bool last) {
    std::vector<double> sent;
    double most = 0;
    for (const Branch& branch : problem.branches) {
        const Option& option = last ? branch.options.back() : branch.options.front();
        const double in = branch.parent == from_root ? 0 : sent[branch.parent];
        sent.push_back(in + option.changes[resource].amount);
        most = std::max(most, sent.back());
    }
    return most;
}

std::vector<std::size_t> drawn_parents(Shape shape, std::size_t branches, SpreadDice& dice) {
    std::vector<std::size_t> parents;
    for (std::size_t b = 0; b < branches; ++b) {
        const std::size_t place = dice.below(b + 1);
        const std::size_t before = shape == Shape::chain ? b - 1 : shape == Shape::star ? 0 : place;
        const bool first = b == 0 || (shape == Shape::tree && place == b);
        parents.push_back(first ? from_root : before);
    }
    return parents;
}

/// Length and current of each run, in metres and amperes.
struct Run {
    double length;
    double current;
};

std::vector<Option> sizes_for(const Run& run, SpreadDice& dice) {
    std::vector<const tables::Conductor*> copper = copper_conductors();
    const auto unusual = [](const tables::Conductor* c) {
        return c->section.number() < 1.5 || c->section.number() > 50;
    };
    copper.erase(std::remove_if(copper.begin(), copper.end(), unusual), copper.end());
    const std::size_t count = 5 + dice.below(5);
    const std::size_t first = dice.below(copper.size() - count + 1);
    std::vector<Option> options;
    for (std::size_t k = first; k < first + count; ++k) {
        const double mm2 = copper[k]->section.number();
        const double r = 2 * copper[k]->r20.value.number() * run.length;
        Option option;
        option.price = run.length * (0.8 + 0.4 * mm2) * dice.between(0.95, 1.05) + 20;
        option.changes[0].amount = r * run.current;
        option.changes[1].amount = r;
        options.push_back(option);
    }
    return options;
}

void draw_more_resources(Problem& problem, SpreadDice dice) {
    for (std::size_t i = 2; i < problem.resources; ++i) {
        for (Branch& branch : problem.branches) {
            const double of_run = dice.between(0.2, 1.2);
            for (Option& option : branch.options) {
                const double factor = of_run * dice.between(0.7, 1.3);
                option.changes[i].amount = option.changes[1].amount * factor;
            }
        }
    }
}

}  // namespace

Problem drawn(const DrawnSpread& asked) {
    SpreadDice dice{std::mt19937(asked.seed)};
    Problem problem;
    problem.resources = asked.resources;
    for (std::size_t i = 0; i < asked.resources; ++i) {
        problem.at_root[i] = asked.grain * dice.whole(0, 4);
    }
    std::vector<std::size_t> name;  // of the branches in the order in which they are hung up
    for (std::size_t b = 0; b < asked.branches; ++b) name.push_back(b);
    for (std::size_t b = asked.branches; b > 1; --b) std::swap(name[b - 1], name[dice.below(b)]);
    problem.branches.resize(asked.branches);
    for (std::size_t b = 0; b < asked.branches; ++b) {
        Branch& branch = problem.branches[name[b]];
        const std::size_t on = dice.below(b + 1);
        branch.parent = on == b ? from_root : name[on];
        const std::size_t options = 1 + dice.below(asked.options);
        for (std::size_t o = 0; o < options; ++o) {
            Option option;
            option.price = asked.grain * dice.whole(0, 12);
            option.grade = static_cast<int>(dice.below(4));
            option.headroom = 0.1 * dice.whole(0, 6);
            for (std::size_t i = 0; i < asked.resources; ++i) {
                option.changes[i] = drawn_change(dice, asked);
            }
            branch.options.push_back(option);
        }
    }
    return problem;
}

std::vector<std::size_t> read_from_root(const Problem& problem) {
    std::vector<std::size_t> order;
    std::vector<std::size_t> open{from_root};
    while (!open.empty()) {
        const std::size_t at = open.back();
        open.pop_back();
        if (at != from_root) order.push_back(at);
        for (std::size_t b = problem.branches.size(); b-- > 0;) {
            if (problem.branches[b].parent == at) open.push_back(b);
        }
    }
    return order;
}

Tried try_all(const Problem& problem) {
    const std::vector<std::size_t> order = read_from_root(problem);
    std::vector<std::size_t> chosen(problem.branches.size(), 0);
    Tried best;
    while (true) {
        const double price = price_of(problem, chosen);
        if (price < best.price && keeps_limits(problem, chosen)) best = {chosen, price};
        std::size_t n = order.size();
        while (n > 0 && ++chosen[order[n - 1]] == problem.branches[order[n - 1]].options.size()) {
            chosen[order[--n]] = 0;
        }
        if (n == 0) return best;
    }
}

Problem drawn_sizing(Shape shape, std::size_t branches, unsigned seed, std::size_t resources) {
    SpreadDice dice{std::mt19937(seed)};
    Problem problem;
    problem.resources = resources;
    const auto parents = drawn_parents(shape, branches, dice);
    std::vector<double> load(branches);
    for (double& kw : load) kw = dice.between(2, 20);
    for (std::size_t b = branches; b-- > 0;) {
        if (parents[b] != from_root) load[parents[b]] += load[b];
    }
    for (std::size_t b = 0; b < branches; ++b) {
        const Run run{dice.between(5, 40), 3 * std::sqrt(load[b])};
        problem.branches.push_back({parents[b], sizes_for(run, dice)});
    }
    draw_more_resources(problem, {std::mt19937(seed + 1)});
    for (std::size_t i = 0; i < resources; ++i) {
        const double thick = most_sent(problem, i, true);
        const double thin = most_sent(problem, i, false);
        const double limit = thick + dice.between(0.15, 0.4) * (thin - thick);
        for (Branch& branch : problem.branches) {
            for (Option& option : branch.options) option.changes[i].leaves_at_most = limit;
        }
    }
    return problem;
}

}  // namespace toft::support
