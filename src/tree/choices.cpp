#include "tree/choices.h"

#include "search/candidates.h"

#include <algorithm>

namespace toft::tree {

namespace {

using rules::Sees;
using search::Head;
using search::Route;
using study::BuildingEarthing;
using study::Incoming;
using study::RunScheme;

/// What a run fed from the house finds there.
Incoming found_at_house(const study::Setting<Silent>& s) {
    Incoming in;
    in.ze_working = s.supply.ze_most;
    in.ze_hot = s.supply.ze_hot;
    in.zn_working = s.supply.zn_working;
    in.zn_hot = s.supply.zn_most;
    in.zl_hot = s.supply.zl_most;
    in.ze_least = s.supply.ze_least;
    in.zn_least = s.supply.zn_least;
    in.zl_least = s.supply.zl_least;
    return in;
}

/// What of a choice its route decides and those behind or before it may feel.
struct RouteMark {
    Figures uses{};
    bool own = false;
    bool bonds = false;
    bool asks_bond = false;  ///< those before it must bond its building
    int phases = 1;
};

RouteMark route_mark(const Choice& c) {
    return {c.uses, c.own_electrode(), c.bonds, c.asks_bond, c.scheme.phases};
}

bool leaves_no_less(const RouteMark& a, const RouteMark& b, bool feeds_others) {
    constexpr auto drop = static_cast<std::size_t>(Axis::drop);
    if (a.uses[drop] > b.uses[drop] || (a.asks_bond && !b.asks_bond)) return false;
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
bool serves_no_less(const HeadMark& a, const HeadMark& b, bool rating_counts) {
    if (a.price > b.price || (a.way && !b.way)) return false;
    if (rating_counts && a.rating < b.rating) return false;
    return includes(b.once, a.once);
}

/// Works through all schemes of one run for boards of one earth.
class Gatherer {
public:
    struct Manner {
        const Wanted& wanted;
        Depth depth;
        const std::function<bool()>& go_on;
    };

    Gatherer(const Workplace& at, const Tree& tree, std::size_t place, const Manner& manner)
        : depth_(manner.depth),
          go_on_(manner.go_on),
          at_(at),
          tree_(tree),
          place_(place),
          floor_(manner.wanted.floor),
          own_(place < manner.wanted.own_electrode.size() ? manner.wanted.own_electrode[place]
                                                          : std::nullopt),
          run_(tree.order[place].run),
          feeds_others_(std::any_of(tree.order.begin(), tree.order.end(),
                                    [&](const Place& p) { return p.parent == place; })) {}

    void gather(RunChoices& out, Earth earth) {
        auto& arriving = out.arriving[static_cast<std::size_t>(earth)];
        earth_ = earth;
        accepted_.clear();
        for (const int phases : study::phase_choices(at_.job, run_)) {
            if (!arriving) {
                RunJudge house(at_, run_, phases, nullptr);
                gather(out, Judges{house, nullptr, nullptr});
            } else if (phases <= arriving->best.phases) {
                behind_runs(out, *arriving, phases);
            }
        }
    }

private:
    /// The same run fed in different ways; null from the house, where there is but one.
    struct Judges {
        RunJudge& best;
        RunJudge* worst;  ///< everything but drop, which adds up by itself, at its worst
        const Incoming* in;
    };

    void behind_runs(RunChoices& out, Arriving& arriving, int phases) {
        RunJudge best(at_, run_, phases, &arriving.best);
        keep_within_drop(arriving, best.setting().drop_limit);
        Incoming in = arriving.worst;
        in.drop = arriving.best.drop;
        RunJudge worst(at_, run_, phases, &in);
        gather(out, Judges{best, &worst, &arriving.best});
    }

    struct RouteParts {
        const Route* route;
        Choice choice;
        study::Figures<Silent> figures;
        double price;
        double lost = 0;  ///< energy over the years, where it counts
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

    void gather(RunChoices& out, const Judges& judges) {
        RunJudge& best = judges.best;
        search::Shop shop = search::shop_for(best.setting());
        if (judges.in) shop.feeds = {site::FedFrom::spare_way};
        const std::vector<Route> routes = search::routes_of(shop, best.setting());
        const std::vector<Head> heads = search::heads_of(shop, best.setting());
        out.considered += static_cast<long>(routes.size() * heads.size());
        if (routes.empty() || heads.empty()) return;
        const std::vector<HeadParts> live = live_heads(best, heads, routes.front());
        strongest_ = nullptr;
        for (const HeadParts& head : live) {
            if (!strongest_ || strongest_->rating < head.head.device->rating) {
                strongest_ = head.head.device;
            }
        }
        for (const RouteParts& route : live_routes(best, routes, heads.front(), judges.in)) {
            if (!goes_on()) return;
            find_rivals(route.choice);
            passed_.clear();
            accepted_.push_back({route_mark(route.choice), {}});
            for (const HeadParts& head : live) pair(out, route, head, judges);
            if (accepted_.back().heads.empty()) accepted_.pop_back();
        }
    }

    bool goes_on() const { return !go_on_ || go_on_(); }

    std::vector<HeadParts> live_heads(RunJudge& judge, const std::vector<Head>& heads,
                                      const Route& route) {
        std::vector<HeadParts> live;
        for (const Head& head : heads) {
            const RunScheme scheme = search::scheme_of(route, head);
            study::Figures<Silent> figures;
            if (!judge.meets(Sees::head, scheme, floor_, figures)) continue;
            const Judged priced = judge.priced(scheme, figures, judge.asked());
            live.push_back(
                {head, priced.price.house_end.number(), priced.once, priced.price.house_end});
        }
        std::stable_sort(live.begin(), live.end(),
                         [](const HeadParts& a, const HeadParts& b) { return a.price < b.price; });
        return live;
    }

    /// Routes that may do, the cheapest first, with their figures.
    std::vector<RouteParts> live_routes(RunJudge& judge, const std::vector<Route>& routes,
                                        const Head& head, const Incoming* in) {
        std::vector<RouteParts> live;
        for (const Route& route : routes) {
            if (!goes_on()) break;
            RouteParts parts;
            parts.route = &route;
            parts.choice.scheme = search::scheme_of(route, head);
            const RunScheme& scheme = parts.choice.scheme;
            if (search::dependability(at_.catalogue, scheme) < floor_.dependability) continue;
            if (own_ && (scheme.earthing == BuildingEarthing::own_electrode) != *own_) continue;
            if (!judge.fits_trenches(scheme)) continue;
            if (!judge.meets(Sees::run, scheme, floor_, parts.figures)) continue;
            const std::vector<price::Item> asked = judge.asked();
            Silent silent;
            study::work_out(silent, judge.setting(), scheme, study::Stage::current, parts.figures);
            study::work_out(silent, judge.setting(), scheme, study::Stage::circuits, parts.figures);
            describe(judge, in, parts, asked);
            live.push_back(std::move(parts));
        }
        std::stable_sort(live.begin(), live.end(), [](const RouteParts& a, const RouteParts& b) {
            return a.price + a.lost < b.price + b.lost;
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
        const Figures came = in ? figures_of(*in) : Figures{};
        for (std::size_t i = 0; i < axes; ++i) c.uses[i] = left[i] - came[i];
        if (depth_ == Depth::quick) {
            c.uses[static_cast<std::size_t>(Axis::ze_least)] = 0;
            c.uses[static_cast<std::size_t>(Axis::zn_least)] = 0;
        }
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
        parts.lost = at_.over_years ? priced.lost : 0;
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
                                         return serves_no_less(mark, rival, rating_counts());
                                     }),
                      rivals_.end());
        rivals_.push_back(mark);
    }

    bool rating_counts() const { return feeds_others_ && depth_ == Depth::full; }

    /// A smaller device of the same make and place has passed on this route, for no more: what
    /// rules declare, the larger only makes worse.
    bool larger_than_needed(const Head& head) const {
        return std::any_of(passed_.begin(), passed_.end(), [&](const Head& other) {
            return other.fed_from == head.fed_from && other.rcd == head.rcd &&
                   other.stays == head.stays && other.device->standard == head.device->standard &&
                   other.device->curve == head.device->curve &&
                   other.device->breaking.value == head.device->breaking.value &&
                   other.device->rating < head.device->rating;
        });
    }

    bool beaten(const HeadMark& mark) const {
        return std::any_of(rivals_.begin(), rivals_.end(), [&](const HeadMark& rival) {
            return serves_no_less(rival, mark, rating_counts());
        });
    }

    void pair(RunChoices& out, const RouteParts& route, const HeadParts& head,
              const Judges& judges) {
        price::Price<Silent> p = route.parts;
        p.house_end = head.house_end;
        price::add_up(p, at_.book);
        HeadMark mark{p.total.number() + route.lost, head.head.device->rating,
                      head.head.fed_from == site::FedFrom::spare_way, route.choice.once};
        mark.once.insert(mark.once.end(), head.once.begin(), head.once.end());
        if (beaten(mark)) return;
        const bool larger = depth_ == Depth::quick && larger_than_needed(head.head);
        Choice c = route.choice;
        c.scheme.device = head.head.device;
        c.scheme.fed_from = head.head.fed_from;
        c.scheme.rcd = head.head.rcd;
        c.scheme.head_stays = head.head.stays;
        c.leaves.device = depth_ == Depth::quick ? strongest_ : head.head.device;
        c.once = mark.once;
        c.price = mark.price;
        study::Figures<Silent> figures = route.figures;
        if (!judges.best.meets(Sees::both, c.scheme, floor_, figures)) return;
        passed_.push_back(head.head);
        if (!judges.worst || judges.worst->judge(c.scheme, floor_).sound) {
            accepted_.back().heads.push_back(mark);
            add_rival(mark);
        } else if (larger) {
            return;
        }
        out.choices.push_back(std::move(c));
    }

    Depth depth_;
    const std::function<bool()>& go_on_;
    std::vector<Head> passed_;                   ///< on the route in hand
    const tables::Device* strongest_ = nullptr;  ///< largest that may stand at the run's head
    const Workplace& at_;
    const Tree& tree_;
    std::size_t place_;
    Floor floor_;
    std::optional<bool> own_;  ///< whether it is to have an electrode of its own
    std::size_t run_;
    bool feeds_others_;
    Earth earth_ = Earth::supply;
    std::vector<Accepted> accepted_;  ///< sound whatever arrives, but for drop
    std::vector<HeadMark> rivals_;    ///< of them those by routes that leave no less than this one
};

}  // namespace

std::vector<RunChoices> choices_of(const Workplace& at, const Tree& tree, const Wanted& wanted,
                                   Depth depth, const std::function<bool()>& go_on) {
    std::vector<RunChoices> all(tree.order.size());
    const Incoming house =
        found_at_house(RunJudge(at, tree.order.front().run, 0, nullptr).setting());
    for (std::size_t i = 0; i < tree.order.size(); ++i) {
        if (go_on && !go_on()) break;
        Gatherer gatherer(at, tree, i, {wanted, depth, go_on});
        const std::size_t parent = tree.order[i].parent;
        if (parent == from_house) {
            gatherer.gather(all[i], Earth::supply);
            continue;
        }
        all[i].arriving = arriving_behind(all[parent].choices, all[parent].arriving, house);
        for (const Earth earth : {Earth::supply, Earth::island}) {
            if (all[i].arriving[static_cast<std::size_t>(earth)]) gatherer.gather(all[i], earth);
        }
    }
    return all;
}

}  // namespace toft::tree
