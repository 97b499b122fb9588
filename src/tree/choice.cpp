#include "tree/choice.h"

#include <algorithm>

namespace toft::tree {

namespace {

using study::Incoming;

/// The largest loops: those to earth first, which start anew behind a building's own electrode.
constexpr std::array<Ohms Incoming::*, growing> largest{&Incoming::ze_working, &Incoming::ze_hot,
                                                        &Incoming::zn_working, &Incoming::zn_hot,
                                                        &Incoming::zl_hot,     &Incoming::runs};
constexpr std::size_t to_earth = 2;

void better_of(Ohms& mine, Ohms other) { mine = other < mine ? other : mine; }
void worse_of(Ohms& mine, Ohms other) { mine = mine < other ? other : mine; }

/// Each figure of `best` no worse than that of `in`. Ratings are the solver's affair: the largest
/// device stands in front of all.
void take_best(Incoming& best, const Incoming& in) {
    best.drop = std::min(best.drop, in.drop);
    better_of(best.ze_working, in.ze_working);
    better_of(best.ze_hot, in.ze_hot);
    better_of(best.zn_working, in.zn_working);
    better_of(best.zn_hot, in.zn_hot);
    better_of(best.zl_hot, in.zl_hot);
    better_of(best.ra_most, in.ra_most);
    better_of(best.runs, in.runs);
    worse_of(best.ze_least, in.ze_least);
    worse_of(best.zn_least, in.zn_least);
    worse_of(best.zl_least, in.zl_least);
    best.phases = std::max(best.phases, in.phases);
    if (best.device->rating < in.device->rating) best.device = in.device;
}

void take_worst(Incoming& worst, const Incoming& in) {
    worst.drop = std::max(worst.drop, in.drop);
    worse_of(worst.ze_working, in.ze_working);
    worse_of(worst.ze_hot, in.ze_hot);
    worse_of(worst.zn_working, in.zn_working);
    worse_of(worst.zn_hot, in.zn_hot);
    worse_of(worst.zl_hot, in.zl_hot);
    worse_of(worst.ra_most, in.ra_most);
    worse_of(worst.runs, in.runs);
    better_of(worst.ze_least, in.ze_least);
    better_of(worst.zn_least, in.zn_least);
    better_of(worst.zl_least, in.zl_least);
    worst.phases = std::max(worst.phases, in.phases);
    if (worst.device->rating < in.device->rating) worst.device = in.device;
}

/// Loops that the choice itself adds, on top of the worst that may arrive.
Incoming left_at_worst(const Choice& c, const Arriving& fed) {
    const auto added = [](Ohms worst, Ohms best, Ohms left) { return worst + (left - best); };
    const auto squares = [](Ohms worst, Ohms best, Ohms left) {
        return root(squared(worst) + (squared(left) - squared(best)));
    };
    Incoming in = c.leaves;
    in.drop = fed.worst.drop + (c.leaves.drop - fed.best.drop);
    in.zn_working = added(fed.worst.zn_working, fed.best.zn_working, c.leaves.zn_working);
    in.zn_hot = added(fed.worst.zn_hot, fed.best.zn_hot, c.leaves.zn_hot);
    in.zl_hot = added(fed.worst.zl_hot, fed.best.zl_hot, c.leaves.zl_hot);
    in.runs = added(fed.worst.runs, fed.best.runs, c.leaves.runs);
    in.zn_least = squares(fed.worst.zn_least, fed.best.zn_least, c.leaves.zn_least);
    in.zl_least = squares(fed.worst.zl_least, fed.best.zl_least, c.leaves.zl_least);
    if (c.own_electrode()) {
        in.ze_least = in.zn_least;
        return in;
    }
    in.ra_most = fed.worst.ra_most;
    in.ze_working = added(fed.worst.ze_working, fed.best.ze_working, c.leaves.ze_working);
    in.ze_hot = added(fed.worst.ze_hot, fed.best.ze_hot, c.leaves.ze_hot);
    in.ze_least = squares(fed.worst.ze_least, fed.best.ze_least, c.leaves.ze_least);
    return in;
}

/// The best of all figures at once may belong to no state there can be: a smallest loop is never
/// larger than the largest.
void keep_in_order(Incoming& best) {
    better_of(best.ze_least, best.ze_working);
    better_of(best.zn_least, best.zn_working);
    better_of(best.zl_least, best.zl_hot);
}

/// Ohms for each per cent of drop that the choice adds.
void take_per_drop(Arriving& at, const Choice& c, const Arriving* fed, const Incoming& came) {
    const double drop = c.leaves.drop - came.drop;
    for (std::size_t i = 0; i < growing; ++i) {
        const bool anew = c.own_electrode() && i < to_earth;
        const double left = (c.leaves.*largest[i]).number();
        const double start = fed ? fed->start[i] : (came.*largest[i]).number();
        at.start[i] = std::max(at.start[i], anew ? left : start);
        if (anew) continue;
        const double added = left - (came.*largest[i]).number();
        const double rate = drop > 0 ? added / drop : no_limit;
        at.per_drop[i] = std::max({at.per_drop[i], rate, fed ? fed->per_drop[i] : 0.0});
    }
}

}  // namespace

ArrivingByEarth arriving_behind(const std::vector<Choice>& choices, const ArrivingByEarth& before,
                                const Incoming& house) {
    ArrivingByEarth arriving;
    for (const Choice& c : choices) {
        auto& at = arriving[static_cast<std::size_t>(c.earth_left())];
        const auto& fed = before[static_cast<std::size_t>(c.earth)];
        const Incoming worst = fed ? left_at_worst(c, *fed) : c.leaves;
        if (!at) at = Arriving{c.leaves, worst, {}, {}};
        at->best.residual.reset();
        at->worst.residual.reset();
        take_best(at->best, c.leaves);
        take_worst(at->worst, worst);
        take_per_drop(*at, c, fed ? &*fed : nullptr, fed ? fed->best : house);
    }
    for (auto& at : arriving) {
        if (at) keep_in_order(at->best);
    }
    return arriving;
}

void keep_within_drop(Arriving& arriving, double drop) {
    for (std::size_t i = 0; i < growing; ++i) {
        const Ohms most = ohms(arriving.start[i] + arriving.per_drop[i] * drop);
        better_of(arriving.worst.*largest[i], most);
    }
}

}  // namespace toft::tree
