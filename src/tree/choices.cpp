#include "tree/choices.h"

#include "search/candidates.h"

#include <algorithm>

namespace toft::tree {

namespace {

using rules::Sees;
using search::Head;
using search::Route;
using study::Incoming;
using study::RunScheme;

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

/// What a run fed from the house finds there.
Figures arriving_at_house(const study::Setting<Silent>& s) {
    Incoming in;
    in.ze_working = s.supply.ze_most;
    in.ze_hot = s.supply.ze_hot;
    in.zn_working = s.supply.zn_working;
    in.zn_hot = s.supply.zn_most;
    in.ze_least = s.supply.ze_least;
    in.zn_least = s.supply.zn_least;
    return figures_of(in);
}

/// The best of all figures at once may belong to no state there can be: a smallest loop is never
/// larger than the largest.
void keep_in_order(Incoming& best) {
    better_of(best.ze_least, best.ze_working);
    better_of(best.zn_least, best.zn_working);
    better_of(best.zl_least, best.zl_hot);
}

/// What of a choice its route decides and those behind it may feel.
struct RouteMark {
    Figures uses{};
    bool own = false;
    bool bonds = false;
    int phases = 1;
};

RouteMark route_mark(const Choice& c) {
    return {c.uses, c.own_electrode(), c.bonds, c.scheme.phases};
}

bool leaves_no_less(const RouteMark& a, const RouteMark& b, bool feeds_others) {
    constexpr auto drop = static_cast<std::size_t>(Axis::drop);
    if (a.uses[drop] > b.uses[drop]) return false;
    if (!feeds_others) return true;
    if (a.own != b.own || a.phases < b.phases || (b.bonds && !a.bonds)) return false;
    for (std::size_t i = 0; i < axes; ++i) {
        if (a.uses[i] > b.uses[i]) return false;
    }
    return true;
}

bool includes(const std::vector<price::Item>& all, const std::vector<price::Item>& some) {
    return std::all_of(some.begin(), some.end(), [&](price::Item item) {
        return std::find(all.begin(), all.end(), item) != all.end();
    });
}

/// What of a choice its head decides, and its price.
struct HeadMark {
    double price = 0;
    Amperes rating;
    bool way = false;  ///< takes a way of the board, which may be wanted for another run
    std::vector<price::Item> once;
};

/// For no more, all that the other can do.
bool serves_no_less(const HeadMark& a, const HeadMark& b, bool feeds_others) {
    if (a.price > b.price || (a.way && !b.way)) return false;
    if (feeds_others && a.rating < b.rating) return false;
    return includes(b.once, a.once);
}

/// Works through all schemes of one run for boards of one earth.
class Gatherer {
public:
    Gatherer(const Workplace& at, const Tree& tree, std::size_t place, const Floor& floor)
        : at_(at),
          tree_(tree),
          place_(place),
          floor_(floor),
          run_(tree.order[place].run),
          tax_(1 + at.book.amount(price::Item::vat_percent) / 100),
          feeds_others_(std::any_of(tree.order.begin(), tree.order.end(),
                                    [&](const Place& p) { return p.parent == place; })) {}

    void gather(RunChoices& out, Earth earth) {
        const auto& arriving = out.arriving[static_cast<std::size_t>(earth)];
        earth_ = earth;
        accepted_.clear();
        for (const int phases : study::phase_choices(at_.job, run_)) {
            if (arriving && arriving->best.phases < phases) continue;
            RunJudge best(at_, run_, phases, arriving ? &arriving->best : nullptr);
            std::optional<RunJudge> worst;
            if (arriving) {
                // Drop adds up by itself: it is left out of the worst.
                Incoming in = arriving->worst;
                in.drop = arriving->best.drop;
                worst.emplace(at_, run_, phases, &in);
            }
            gather(out, best, worst ? &*worst : nullptr, arriving ? &arriving->best : nullptr);
        }
    }

private:
    struct RouteParts {
        const Route* route;
        Choice choice;
        study::Figures<Silent> figures;
        double price;
        price::Price<Silent> parts;
    };
    struct Accepted {
        RouteMark route;
        std::vector<HeadMark> heads;
    };
    struct HeadParts {
        Head head;
        double price;
        std::vector<price::Item> once;
        Pounds house_end;
    };

    void gather(RunChoices& out, RunJudge& best, RunJudge* worst, const Incoming* in) {
        search::Shop shop = search::shop_for(best.setting());
        if (in) shop.feeds = {site::FedFrom::spare_way};
        const std::vector<Route> routes = search::routes_of(shop, best.setting());
        const std::vector<Head> heads = search::heads_of(shop, best.setting());
        out.considered += static_cast<long>(routes.size() * heads.size());
        if (routes.empty() || heads.empty()) return;
        const std::vector<HeadParts> live = live_heads(best, heads, routes.front());
        for (const RouteParts& route : live_routes(best, routes, heads.front(), in)) {
            find_rivals(route.choice);
            accepted_.push_back({route_mark(route.choice), {}});
            for (const HeadParts& head : live) pair(out, route, head, best, worst);
            if (accepted_.back().heads.empty()) accepted_.pop_back();
        }
    }

    std::vector<HeadParts> live_heads(RunJudge& judge, const std::vector<Head>& heads,
                                      const Route& route) {
        std::vector<HeadParts> live;
        for (const Head& head : heads) {
            const RunScheme scheme = search::scheme_of(route, head);
            study::Figures<Silent> figures;
            if (!judge.meets(Sees::head, scheme, floor_, figures)) continue;
            const Judged priced = judge.priced(scheme, figures, judge.asked());
            live.push_back({head, priced.price.house_end.number(), priced.once,
                            priced.price.house_end});
        }
        std::stable_sort(live.begin(), live.end(), [](const HeadParts& a, const HeadParts& b) {
            return a.price < b.price;
        });
        return live;
    }

    /// Routes that may do, the cheapest first, with their figures.
    std::vector<RouteParts> live_routes(RunJudge& judge, const std::vector<Route>& routes,
                                        const Head& head, const Incoming* in) {
        std::vector<RouteParts> live;
        for (const Route& route : routes) {
            RouteParts parts;
            parts.route = &route;
            parts.choice.scheme = search::scheme_of(route, head);
            const RunScheme& scheme = parts.choice.scheme;
            if (dependability(at_.catalogue, scheme) < floor_.dependability) continue;
            if (!judge.meets(Sees::run, scheme, floor_, parts.figures)) continue;
            const std::vector<price::Item> asked = judge.asked();
            Silent silent;
            study::work_out(silent, judge.setting(), scheme, study::Stage::current, parts.figures);
            study::work_out(silent, judge.setting(), scheme, study::Stage::circuits,
                            parts.figures);
            describe(judge, in, parts, asked);
            live.push_back(std::move(parts));
        }
        std::stable_sort(live.begin(), live.end(), [](const RouteParts& a, const RouteParts& b) {
            return a.price < b.price;
        });
        return live;
    }

    void describe(RunJudge& judge, const Incoming* in, RouteParts& parts,
                  const std::vector<price::Item>& asked) {
        Choice& c = parts.choice;
        c.earth = earth_;
        c.takes.fill(no_limit);
        c.leaves = study::left_at_board(judge.setting(), c.scheme, parts.figures);
        const Figures left = figures_of(c.leaves);
        const Figures came = in ? figures_of(*in) : arriving_at_house(judge.setting());
        for (std::size_t i = 0; i < axes; ++i) c.uses[i] = left[i] - came[i];
        const auto& s = judge.setting();
        c.takes[static_cast<std::size_t>(Axis::drop)] =
            s.drop_limit * (1 - floor_.headroom) - c.uses[static_cast<std::size_t>(Axis::drop)];
        c.asks_bond = tree_.extraneous[place_] && !c.own_electrode();
        judge.bond_beyond(true);
        study::Figures<Silent> figures = parts.figures;
        c.bonds = c.own_electrode() || judge.meets(Sees::run, c.scheme, floor_, figures);
        judge.bond_beyond(false);
        const Judged priced = judge.priced(c.scheme, parts.figures, asked);
        parts.parts = priced.price;
        c.once = priced.once;
        const auto& p = priced.price;
        parts.price = (p.run + p.ground + p.far_end + p.test_and_paper).number();
    }

    /// Sound choices by routes that leave no less than this one, those alone that no other serves
    /// as well as.
    void find_rivals(const Choice& route) {
        const RouteMark own = route_mark(route);
        rivals_.clear();
        for (const Accepted& other : accepted_) {
            if (!leaves_no_less(other.route, own, feeds_others_)) continue;
            for (const HeadMark& mark : other.heads) add_rival(mark);
        }
    }

    void add_rival(const HeadMark& mark) {
        if (beaten(mark)) return;
        rivals_.erase(std::remove_if(rivals_.begin(), rivals_.end(),
                                     [&](const HeadMark& rival) {
                                         return serves_no_less(mark, rival, feeds_others_);
                                     }),
                      rivals_.end());
        rivals_.push_back(mark);
    }

    bool beaten(const HeadMark& mark) const {
        return std::any_of(rivals_.begin(), rivals_.end(), [&](const HeadMark& rival) {
            return serves_no_less(rival, mark, feeds_others_);
        });
    }

    void pair(RunChoices& out, const RouteParts& route, const HeadParts& head, RunJudge& best,
              RunJudge* worst) {
        const double net = route.price + head.price;
        HeadMark mark{net * tax_, head.head.device->rating,
                      head.head.fed_from == site::FedFrom::spare_way, route.choice.once};
        mark.once.insert(mark.once.end(), head.once.begin(), head.once.end());
        if (beaten(mark)) return;
        Choice c = route.choice;
        c.scheme.device = head.head.device;
        c.scheme.fed_from = head.head.fed_from;
        c.scheme.rcd = head.head.rcd;
        c.leaves.device = head.head.device;
        c.once = mark.once;
        price::Price<Silent> p = route.parts;
        p.house_end = head.house_end;
        price::add_up(p, at_.book);
        c.price = p.total.number();
        study::Figures<Silent> figures = route.figures;
        if (!best.meets(Sees::both, c.scheme, floor_, figures)) return;
        if (!worst || worst->judge(c.scheme, floor_).sound) {
            accepted_.back().heads.push_back(mark);
            add_rival(mark);
        }
        out.choices.push_back(std::move(c));
    }

    const Workplace& at_;
    const Tree& tree_;
    std::size_t place_;
    Floor floor_;
    std::size_t run_;
    double tax_;  ///< price with tax over price without
    bool feeds_others_;
    Earth earth_ = Earth::supply;
    std::vector<Accepted> accepted_;  ///< sound whatever arrives, but for drop
    std::vector<HeadMark> rivals_;    ///< of them those by routes that leave no less than this one
};

/// What may arrive behind the choices of the run that feeds this one.
void add_arriving(const RunChoices& before, std::array<std::optional<Arriving>, 2>& arriving) {
    for (const Choice& c : before.choices) {
        auto& at = arriving[static_cast<std::size_t>(c.earth_left())];
        const auto& fed = before.arriving[static_cast<std::size_t>(c.earth)];
        Incoming worst = c.leaves;
        if (fed) worst = left_at_worst(c, *fed);
        if (!at) {
            at = Arriving{c.leaves, worst};
            at->best.residual.reset();
            at->worst.residual.reset();
            continue;
        }
        take_best(at->best, c.leaves);
        take_worst(at->worst, worst);
    }
}

}  // namespace

std::vector<RunChoices> choices_of(const Workplace& at, const Tree& tree, const Floor& floor) {
    std::vector<RunChoices> all(tree.order.size());
    for (std::size_t i = 0; i < tree.order.size(); ++i) {
        Gatherer gatherer(at, tree, i, floor);
        const std::size_t parent = tree.order[i].parent;
        if (parent == from_house) {
            gatherer.gather(all[i], Earth::supply);
            continue;
        }
        add_arriving(all[parent], all[i].arriving);
        for (auto& arriving : all[i].arriving) {
            if (arriving) keep_in_order(arriving->best);
        }
        for (const Earth earth : {Earth::supply, Earth::island}) {
            if (all[i].arriving[static_cast<std::size_t>(earth)]) gatherer.gather(all[i], earth);
        }
    }
    return all;
}

}  // namespace toft::tree
