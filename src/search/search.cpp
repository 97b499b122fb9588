#include "search/search.h"

#include "base/order.h"
#include "loss/energy.h"
#include "search/heads.h"
#include "search/judge.h"
#include "search/keep.h"
#include "search/pool.h"
#include "search/sieve.h"
#include "study/ground_memo.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

namespace toft::search {

namespace {

using rules::rule_count;
using rules::Sees;
using rules::Verdict;
using study::RunScheme;

class Searcher {
public:
    Searcher(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
             std::size_t run_index, const Options& options)
        : book_(book), ranks_(ranks_of(catalogue)), prefer_(job.wishes.prefer), options_(options) {
        collects_ = options.possible && prefer_ != site::Prefer::headroom;
        nearest_.fill(std::numeric_limits<double>::infinity());
        result_.all_possible = collects_;
        for (const int phases : study::phase_choices(job, run_index)) {
            judges_.emplace_back(
                catalogue, job,
                study::RunAt{run_index, phases, options.memo ? options.memo : &memo_},
                options.corner);
        }
        for (const rules::Rule& rule : rules::rulebook()) {
            result_.dropped.push_back({rule.info, 0, std::nullopt, 0, ""});
        }
    }

    Result run() {
        for (const Judge& judge : judges_) {
            judge_ = &judge;
            const Shop shop = shop_for(judge.setting());
            const std::vector<Route> routes = routes_of(shop, judge.setting());
            heads_ = HeadList(judge, book_, heads_of(shop, judge.setting()), routes);
            sieve_ = Sieve(heads_, book_);
            near_misses_ = heads_.near_misses();
            result_.candidates += static_cast<long>(routes.size() * heads_.all().size());
            if (!routes.empty() && !heads_.all().empty()) search_routes(routes);
        }
        return finish();
    }

private:
    study::GroundMemo memo_;  // for when the caller keeps none
    void search_routes(const std::vector<Route>& routes) {
        std::vector<JudgedRoute> live;
        Silent silent;
        const auto year = loss::year_of(silent, judge_->setting());
        for (const Route& route : routes) {
            if (!goes_on()) return;
            RunScheme scheme = scheme_of(route, heads_.all().front().head);
            judge_->judge_fate(Sees::run, scheme, &nearest_, part_);
            if (part_.first_hard != rule_count) {
                fall(scheme);
                continue;
            }
            live.push_back({&route, finding_of(*judge_, book_, scheme, part_),
                            dependability(ranks_, scheme), lost_over_years(scheme, year)});
            PartFinding& found = live.back().finding;
            if (collects_) found.span = span_of_route(*judge_, book_, scheme, found);
        }
        put_in_order(live, [](const JudgedRoute& a, const JudgedRoute& b) {
            return a.finding.price.total < b.finding.price.total;
        });
        for (const JudgedRoute& route : live) {
            if (!goes_on()) return;
            pair_up(route);
        }
    }

    bool goes_on() {
        if (!result_.stopped && options_.go_on) result_.stopped = !options_.go_on();
        return !result_.stopped;
    }

    /// Of the route just judged.
    double lost_over_years(const RunScheme& scheme, const loss::Year<Silent>& year) {
        Silent silent;
        study::work_out(silent, judge_->setting(), scheme, study::Stage::drop, part_.figures);
        return loss::over_years(book_, judge_->setting(), part_.figures, year).pounds;
    }

    void work_out_route(const RunScheme& scheme) {
        Silent silent;
        figures_.done = study::Stage::none;
        study::work_out(silent, judge_->setting(), scheme, study::Stage::current, figures_);
    }

    static void take(RunScheme& scheme, const Head& head) {
        scheme.device = head.device;
        scheme.fed_from = head.fed_from;
        scheme.rcd = head.rcd;
        scheme.head_stays = head.stays;
    }

    /// All heads on a route that may live. What depends on the route alone is worked out once, and
    /// only when some pair has to be judged.
    void pair_up(const JudgedRoute& route) {
        for (std::size_t i = 0; i < rule_count; ++i) {
            const auto& fallen = heads_.fallen()[i];
            result_.dropped[i].count += fallen.count;
            result_.fallen += fallen.count;
            if (fallen.count > 0 && !*result_.dropped[i].says)
                result_.dropped[i].says = fallen.says;
        }
        Sound s = promised(route);
        worked_out_ = false;
        forget(kinder_figures_);
        if (route.finding.failures == 0) look_at_near_misses(s.scheme);
        blocked_.assign(heads_.ladders(), std::numeric_limits<std::size_t>::max());
        best_ = best_like(s);
        const auto& live = heads_.live();
        sieve_.take_up(route.finding);
        const auto ceiling = [&](double headroom) { return set_aside_above(route, headroom); };
        const std::size_t hopeless = sieve_.first_hopeless(ceiling);
        result_.set_aside += static_cast<long>(live.size() - hopeless);
        for (std::size_t i = 0; i < hopeless; ++i) {
            const std::size_t from = i;
            i = collects_ ? i : sieve_.next(i, hopeless, ceiling);
            result_.set_aside += static_cast<long>(i - from);
            if (i < hopeless) look_at_pair(s, route, i);
        }
    }

    /// The pair with live head `i`, unless it is set aside or a smaller device fell already.
    void look_at_pair(Sound& s, const JudgedRoute& route, std::size_t i) {
        const JudgedHead& head = *heads_.live()[i];
        const auto ceiling = [&](double headroom) { return set_aside_above(route, headroom); };
        const bool open = collects_ || sieve_.sift(i, ceiling) == Sifted::open;
        if (open && set_aside(promise_with(route, head))) {
            ++result_.set_aside;
        } else if (head.rung >= blocked_[head.ladder]) {
            ++result_.dropped[first_moving_].count;
            ++result_.fallen;
        } else {
            pair(s, route, head);
        }
    }

    /// … with the energy it loses and what open facts may make of its price.
    struct Promise : Hoped {
        double lost = 0;
        Span span;
    };

    Sound promised(const JudgedRoute& route) const {
        Sound s;
        s.scheme = scheme_of(*route.route, heads_.all().front().head);
        s.dependability = route.dependability;
        s.lost = route.lost;
        s.verdicts = route.finding.verdicts;
        return s;
    }

    Promise promise_with(const JudgedRoute& route, const JudgedHead& head) const {
        return {{together(route.finding.price, head.finding.price, book_).total.number(),
                 std::min(route.finding.headroom, head.finding.headroom), route.dependability},
                route.lost,
                route.finding.span + head.finding.span};
    }

    /// The best sound scheme of that combination, or null.
    const Sound* best_like(const Sound& s) const {
        const auto best = sound_.best.find(combination(s));
        return best == sound_.best.end() ? nullptr : &best->second;
    }

    /// Whether nothing that judging could bring to light would get the scheme shown: a sound one
    /// beats it, a sound one of its combination comes before it, and one is cheaper over the years.
    bool set_aside(const Promise& p) const {
        if (collects_ && !never_first(p.span, p.dependability)) return false;
        if (options_.first_only) return sound_.first && surely_first(*sound_.first, p, prefer_);
        return best_ && surely_before(*best_, p.total, p.headroom, prefer_) && !may_be_thrift(p) &&
               sound_.front.beats(p.total, p.headroom, p.dependability);
    }

    /// The price above which a scheme of that route and at most that headroom is set aside.
    double set_aside_above(const JudgedRoute& route, double headroom) const {
        constexpr double unlimited = std::numeric_limits<double>::infinity();
        if (collects_) return unlimited;
        if (options_.first_only) {
            const Hoped hoped{0, headroom, route.dependability};
            return sound_.first ? first_above(*sound_.first, hoped, prefer_) : unlimited;
        }
        if (!best_ || !sound_.thrift) return unlimited;
        return std::max({before_above(*best_, headroom, prefer_),
                         sound_.thrift->total + sound_.thrift->lost - route.lost,
                         sound_.front.beaten_above(headroom, route.dependability)});
    }

    bool may_be_thrift(const Promise& p) const {
        return !sound_.thrift || p.total + p.lost <= sound_.thrift->total + sound_.thrift->lost;
    }

    /// Whether a sound scheme comes before it at every corner of the open facts.
    bool never_first(const Span& span, double dependability) const {
        if (!spared_) return false;
        const bool by_rank = prefer_ == site::Prefer::dependability;
        if (by_rank && dependability != spared_->dependability) {
            return dependability < spared_->dependability;
        }
        return span.surely_above(spared_->span);
    }

    /// Keeps a scheme that may come first elsewhere; when there are too many, none.
    void collect(const Sound& s, const Span& span, bool sure) {
        if (!collects_) return;
        Possible possible{s, span};
        if (sure && (!spared_ || comes_before(s, *spared_, prefer_))) spared_ = possible;
        if (!never_first(span, s.dependability)) result_.possible.push_back(possible);
        if (result_.possible.size() < options_.most_possible) return;
        drop_beaten();
        collects_ = result_.possible.size() < options_.most_possible;
        if (collects_) return;
        result_.possible.clear();
        result_.all_possible = false;
    }

    void drop_beaten() {
        auto& all = result_.possible;
        all.erase(std::remove_if(
                      all.begin(), all.end(),
                      [this](const Possible& p) { return never_first(p.span, p.dependability); }),
                  all.end());
    }

    /// Of the heads that fail one rule only, the nearest that would do with this route. What is no
    /// nearer than another was will not be again.
    void look_at_near_misses(const RunScheme& route) {
        const auto passed = [&](const JudgedHead* head) {
            const std::size_t rule = head->finding.first_hard;
            if (!comes_nearer(head->miss, nearest_[rule])) return true;
            RunScheme scheme = route;
            take(scheme, head->head);
            if (fits(scheme)) come_near(rule, scheme, head->miss);
            return false;
        };
        near_misses_.erase(std::remove_if(near_misses_.begin(), near_misses_.end(), passed),
                           near_misses_.end());
    }

    /// All schemes of a route that fails a rule however it is fed.
    void fall(RunScheme& scheme) {
        Dropped& dropped = result_.dropped[part_.first_hard];
        dropped.count += static_cast<long>(heads_.all().size());
        result_.fallen += static_cast<long>(heads_.all().size());
        const auto& finding = part_.findings[part_.first_hard];
        if (!*dropped.says) dropped.says = finding.says;
        if (part_.failures > 1 || !comes_nearer(finding, nearest_[part_.first_hard])) return;
        worked_out_ = false;
        for (const JudgedHead* head : heads_.live()) {
            if (head->finding.failures > 0) continue;
            take(scheme, head->head);
            if (!fits(scheme)) continue;
            come_near(part_.first_hard, scheme, finding);
            return;
        }
    }

    void come_near(std::size_t rule, const RunScheme& scheme,
                   const rules::Finding<Silent>& finding) {
        result_.dropped[rule].nearest = scheme;
        result_.dropped[rule].nearest_use = nearest_[rule] = finding.use;
    }

    /// Figures of the route stay from head to head, those that hang on the head are made anew.
    void begin_pair(const RunScheme& scheme) {
        if (!worked_out_) work_out_route(scheme);
        worked_out_ = true;
        figures_.done = study::Stage::current;
    }

    /// Whether route and head together fail no rule but `but`.
    bool fits(const RunScheme& scheme, std::size_t but = rule_count) {
        begin_pair(scheme);
        for (const std::size_t i : on_both_) {
            if (i != but && judge_->judge(i, scheme, figures_).verdict == Verdict::fails)
                return false;
        }
        return true;
    }

    /// Judges the pair rule by rule; `s` comes with what its route is known for.
    void pair(Sound& s, const JudgedRoute& route, const JudgedHead& head) {
        take(s.scheme, head.head);
        begin_pair(s.scheme);
        std::optional<Promise> promise;
        std::size_t failures = 0;
        for (const std::size_t i : on_both_) {
            const auto& finding = pair_findings_[i] = judge_->judge(i, s.scheme, figures_);
            if (finding.verdict == Verdict::fails) {
                ++failures;
                if (!judge_->may_meet(i, s.scheme, kinder_figures_))
                    return fall_to(i, s.scheme, route, head);
            }
            if (!finding.limited || !finding.rule->graded) continue;
            if (!promise) promise = promise_with(route, head);
            promise->headroom = std::min(promise->headroom, 1 - finding.use);
            if (set_aside(*promise)) {
                ++result_.set_aside;
                return;
            }
        }
        keep(s, route, head, promise ? *promise : promise_with(route, head), failures);
    }

    /// A pair that fails rule `index` at every end. It is a near miss if it fails no other.
    void fall_to(std::size_t index, const RunScheme& scheme, const JudgedRoute& route,
                 const JudgedHead& head) {
        Dropped& dropped = result_.dropped[index];
        const auto finding = pair_findings_[index];
        ++dropped.count;
        ++result_.evaluated;
        if (!*dropped.says) dropped.says = finding.says;
        if (route.finding.failures + head.finding.failures == 0 &&
            comes_nearer(finding, nearest_[index]) && fits(scheme, index)) {
            come_near(index, scheme, finding);
        }
        // A larger device of the same make only makes worse what declares so.
        const bool worse = rules::rulebook()[index].info->larger == rules::Trend::worse;
        if (index == first_moving_ && worse) blocked_[head.ladder] = head.rung;
    }

    void keep(const Sound& route_s, const JudgedRoute& route, const JudgedHead& head,
              const Promise& promise, std::size_t failures) {
        ++result_.evaluated;
        Sound s = route_s;
        s.total = promise.total;
        const PartFinding& least =
            route.finding.headroom <= head.finding.headroom ? route.finding : head.finding;
        s.headroom = least.headroom;
        s.governed_by = least.governed_by;
        for (std::size_t i = 0; i < rule_count; ++i) {
            const Sees sees = rules::rulebook()[i].info->sees;
            if (sees == Sees::head) s.verdicts[i] = head.finding.verdicts[i];
            if (sees != Sees::both || rules::rulebook()[i].info->only_cautions) continue;
            const Verdict verdict = pair_findings_[i].verdict;
            s.verdicts[i] = verdict == Verdict::fails ? Verdict::not_known : verdict;
            count_headroom(pair_findings_[i], s.headroom, s.governed_by);
        }
        const bool sure = failures + route.finding.failures + head.finding.failures == 0;
        add_to(sure ? sound_ : unsure_, s);
        collect(s, promise.span, sure);
        best_ = best_like(s);
        sieve_.forget();
    }

    /// Keeps the scheme unless one like it already found is shown rather.
    void add_to(Pool& pool, const Sound& s) {
        ++pool.count;
        if (options_.first_only) {
            if (pool.first &&
                surely_first(*pool.first, {s.total, s.headroom, s.dependability}, prefer_))
                return;
            if (!pool.first || comes_before(s, *pool.first, prefer_)) pool.first = s;
            pool.found.push_back(s);
            return;
        }
        pool.add(s, prefer_);
    }

    Result finish() {
        result_.all_possible = result_.all_possible && !result_.stopped;
        result_.sound = sound_.count;
        result_.conditional = unsure_.count;
        drop_beaten();
        order_by_key();
        if (options_.first_only) options_.most = 1;
        show(sound_.found);
        if (!options_.first_only) show_thrift();
        if (!options_.first_only || sound_.found.empty())
            show(promising(unsure_.found, sound_.found, prefer_));
        auto& dropped = result_.dropped;
        dropped.erase(std::remove_if(dropped.begin(), dropped.end(),
                                     [](const Dropped& d) { return d.count == 0; }),
                      dropped.end());
        return std::move(result_);
    }

    void order_by_key() {
        for (auto* found : {&sound_.found, &unsure_.found}) {
            for (Sound& s : *found) keys_.emplace_back(study::scheme_key(s.scheme), &s);
        }
        put_in_order(keys_, [](const auto& a, const auto& b) { return a.first < b.first; });
        long place = 0;
        for (auto& [key, s] : keys_) s->order = place++;
    }

    void show(const std::vector<Sound>& found) {
        const std::size_t shown = result_.contenders.size();
        const std::size_t room = options_.all            ? std::numeric_limits<std::size_t>::max()
                                 : options_.most > shown ? options_.most - shown
                                                         : 0;
        for (const Sound& s : kept(found, prefer_, room)) {
            result_.contenders.push_back(contender(s));
        }
    }

    /// The one that costs least over the years takes its place among those shown, at need in place
    /// of the last.
    void show_thrift() {
        if (!sound_.thrift) return;
        auto& shown = result_.contenders;
        Sound thrift = *sound_.thrift;
        const std::string key = study::scheme_key(thrift.scheme);
        for (const auto& [known, s] : keys_) {
            if (known == key) thrift.order = s->order;
        }
        auto at = std::find_if(shown.begin(), shown.end(),
                               [&](const Contender& c) { return c.key == key; });
        if (at == shown.end()) {
            if (!options_.all && shown.size() == options_.most && shown.size() > 1) {
                shown.pop_back();
            }
            at = std::find_if(shown.begin(), shown.end(),
                              [&](const Contender& c) { return comes_before(thrift, c, prefer_); });
            at = shown.insert(at, contender(thrift));
        }
        result_.least_over_years = static_cast<std::size_t>(at - shown.begin());
    }

    Contender contender(const Sound& s) {
        Contender c;
        static_cast<Sound&>(c) = s;
        c.key = keys_[static_cast<std::size_t>(s.order)].first;
        const Judge& judge = judge_for(s.scheme);
        Evaluation evaluation;
        evaluate(judge.setting(), s.scheme, evaluation);
        for (std::size_t i = 0; i < rule_count; ++i) {
            const auto& finding = evaluation.findings[i];
            if (finding.rule->only_cautions) c.verdicts[i] = finding.verdict;
            add_remedy(finding, c.extras.remedies);
        }
        c.extras.circuits = price::wired(evaluation.figures);
        Silent silent;
        c.price = price::price_of(silent, book_, judge.setting(), s.scheme, c.extras);
        c.conditional_on = judge.hangs_on(s.scheme, c.verdicts);
        return c;
    }

    const Judge& judge_for(const RunScheme& scheme) const {
        for (const Judge& judge : judges_) {
            if (judge.setting().phases == scheme.phases) return judge;
        }
        return judges_.front();
    }

    const price::Book& book_;
    Ranks ranks_;
    site::Prefer prefer_;
    Options options_;
    std::vector<Judge> judges_;  ///< one for each number of phases
    const Judge* judge_ = nullptr;
    HeadList heads_;
    Sieve sieve_;
    std::vector<const JudgedHead*> near_misses_;  ///< of the heads, those that may come nearer yet
    Nearest nearest_;
    PartJudgement part_;
    const Sound* best_ = nullptr;  ///< sound, of the combination of the route in hand
    const std::vector<std::size_t> on_both_ = rules_on_both();
    const std::size_t first_moving_ = first_that_moves();
    std::vector<std::size_t> blocked_;  ///< by ladder: the rung from which on all fall
    study::Figures<Silent> figures_;
    KinderFigures kinder_figures_;
    bool collects_ = false;           ///< what may come first at other corners
    std::optional<Possible> spared_;  ///< sound as things stand, by which those are measured
    bool worked_out_ = false;         ///< figures_ are those of the route in hand
    std::array<rules::Finding<Silent>, rule_count> pair_findings_;
    Pool sound_;
    Pool unsure_;
    std::vector<std::pair<std::string, Sound*>> keys_;  ///< of both, in order
    Result result_;
};

}  // namespace

Result search(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
              std::size_t run_index, const Options& options) {
    return Searcher(catalogue, book, job, run_index, options).run();
}

}  // namespace toft::search
