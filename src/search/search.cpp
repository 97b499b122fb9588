#include "search/search.h"

#include "search/judge.h"
#include "search/keep.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace toft::search {

namespace {

using rules::rule_count;
using rules::Sees;
using rules::Verdict;
using study::RunScheme;

/// A run or a head with what was found of it, and its share of the price.
struct Part {
    PartJudgement judgement;
    price::Price<Silent> price;
    double dependability = 0;
    long order = 0;  ///< place of its key among its like
};

/// Place of each key in the order of all; keys differ.
std::vector<long> places(const std::vector<std::string>& keys) {
    std::vector<std::size_t> order(keys.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return keys[a] < keys[b]; });
    std::vector<long> places(keys.size());
    for (std::size_t i = 0; i < order.size(); ++i) places[order[i]] = static_cast<long>(i);
    return places;
}

/// Live heads of one make and place that differ in rating only, the smallest first.
using Ladder = std::vector<std::size_t>;

class Searcher {
public:
    Searcher(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
             std::size_t run_index, const Options& options)
        : catalogue_(catalogue), book_(book), prefer_(job.wishes.prefer), options_(options) {
        for (const int phases : study::phase_choices(job, run_index)) {
            judges_.emplace_back(catalogue, job, study::RunAt{run_index, phases}, options.corner);
        }
        for (const rules::Rule& rule : rules::rulebook()) {
            result_.dropped.push_back({rule.info, 0, std::nullopt, 0, 0, ""});
        }
    }

    Result run() {
        std::vector<std::vector<Route>> routes;
        std::vector<std::string> keys;
        for (const Judge& judge : judges_) {
            routes.push_back(routes_of(shop_for(judge.setting()), judge.setting()));
            for (const Route& r : routes.back()) keys.push_back(study::run_key(scheme_of(r, {})));
        }
        const std::vector<long> order = places(keys);
        std::size_t first = 0;
        for (std::size_t j = 0; j < judges_.size(); ++j) {
            judge_ = &judges_[j];
            heads_ = heads_of(shop_for(judge_->setting()), judge_->setting());
            result_.candidates += static_cast<long>(routes[j].size() * heads_.size());
            if (!routes[j].empty() && !heads_.empty()) {
                search_routes(routes[j], order.data() + first);
            }
            first += routes[j].size();
        }
        return finish();
    }

private:
    void search_routes(const std::vector<Route>& routes, const long* order) {
        judge_heads(routes.front());
        Part part;
        for (std::size_t i = 0; i < routes.size(); ++i) {
            RunScheme scheme = scheme_of(routes[i], heads_.front());
            part.order = order[i] * static_cast<long>(heads_.size());
            part.judgement.figures.done = study::Stage::none;
            judge_->judge_part(Sees::run, scheme, part.judgement);
            part.price = priced(scheme, part.judgement);
            part.dependability = rank_of(scheme);
            pair_up(scheme, part);
        }
    }

    void judge_heads(const Route& route) {
        head_parts_.assign(heads_.size(), {});
        std::vector<std::string> keys;
        for (const Head& head : heads_) keys.push_back(study::head_key(scheme_of(route, head)));
        const std::vector<long> order = places(keys);
        for (std::size_t i = 0; i < heads_.size(); ++i) {
            head_parts_[i].order = order[i];
            const RunScheme scheme = scheme_of(route, heads_[i]);
            judge_->judge_part(Sees::head, scheme, head_parts_[i].judgement);
            head_parts_[i].price = priced(scheme, head_parts_[i].judgement);
        }
        sort_heads();
    }

    /// Heads that fall by themselves are counted; of them those that fail one rule may be nearest
    /// misses. The others stand in ladders.
    void sort_heads() {
        ladders_.clear();
        near_misses_.clear();
        fallen_.fill(0);
        fallen_says_.fill("");
        for (std::size_t h = 0; h < heads_.size(); ++h) {
            const PartJudgement& judgement = head_parts_[h].judgement;
            const std::size_t rule = judgement.first_hard;
            if (rule == rule_count) {
                add_rung(h);
                continue;
            }
            if (fallen_[rule]++ == 0) fallen_says_[rule] = judgement.findings[rule].says;
            if (judgement.failures == 1) near_misses_.push_back(h);
        }
        std::sort(near_misses_.begin(), near_misses_.end(), [this](std::size_t a, std::size_t b) {
            return std::make_tuple(miss(a), head_parts_[a].order) <
                   std::make_tuple(miss(b), head_parts_[b].order);
        });
        by_key_.clear();
        for (std::size_t h = 0; h < heads_.size(); ++h) by_key_.push_back(h);
        std::sort(by_key_.begin(), by_key_.end(), [this](std::size_t a, std::size_t b) {
            return head_parts_[a].order < head_parts_[b].order;
        });
    }

    double miss(std::size_t h) const {
        const PartJudgement& judgement = head_parts_[h].judgement;
        return judgement.findings[judgement.first_hard].use;
    }

    void add_rung(std::size_t h) {
        for (Ladder& ladder : ladders_) {
            if (next_rung(ladder.back(), h)) {
                ladder.push_back(h);
                return;
            }
        }
        ladders_.push_back({h});
    }

    bool next_rung(std::size_t a, std::size_t b) const {
        const tables::Device& x = *heads_[a].device;
        const tables::Device& y = *heads_[b].device;
        return x.standard == y.standard && x.curve == y.curve &&
               x.breaking.value == y.breaking.value && heads_[a].fed_from == heads_[b].fed_from &&
               heads_[a].rcd == heads_[b].rcd && x.rating < y.rating;
    }

    /// Price of a scheme with the remedies that this part of it calls for.
    price::Price<Silent> priced(const RunScheme& scheme, const PartJudgement& part) {
        std::vector<price::Item> remedies;
        for (const auto& finding : part.findings) {
            bool found = false;
            const price::Item item = price::item_of(finding.remedy, found);
            if (found) remedies.push_back(item);
        }
        Silent silent;
        return price::price_of(silent, book_, judge_->setting(), scheme, remedies);
    }

    static void take(RunScheme& scheme, const Head& head) {
        scheme.device = head.device;
        scheme.fed_from = head.fed_from;
        scheme.rcd = head.rcd;
    }

    void pair_up(RunScheme& scheme, const Part& part) {
        if (part.judgement.first_hard != rule_count) {
            fall(scheme, part, part.judgement.first_hard);
            return;
        }
        figures_ = part.judgement.figures;
        Silent silent;
        // Worked out once for all heads of this route.
        study::work_out(silent, judge_->setting(), scheme, study::Stage::current, figures_);
        for (std::size_t i = 0; i < rule_count; ++i) {
            result_.dropped[i].count += fallen_[i];
            if (fallen_[i] > 0 && !*result_.dropped[i].says)
                result_.dropped[i].says = fallen_says_[i];
        }
        if (part.judgement.failures == 0) look_at_near_misses(scheme, part);
        for (const Ladder& ladder : ladders_) climb(scheme, part, ladder);
    }

    /// A larger device of the same make only makes worse what declares so: once such a rule, the
    /// first of those that move with the rating, fails for good, the rest of the ladder fails it.
    void climb(RunScheme& scheme, const Part& part, const Ladder& ladder) {
        for (std::size_t k = 0; k < ladder.size(); ++k) {
            take(scheme, heads_[ladder[k]]);
            const std::size_t fell_to = pair(scheme, part, ladder[k]);
            if (fell_to != first_moving_ ||
                rules::rulebook()[fell_to].info->larger != rules::Trend::worse)
                continue;
            const long order = part.order + head_parts_[ladder[k]].order;
            if (nearer(result_.dropped[fell_to], pair_findings_[fell_to], order)) continue;
            result_.dropped[fell_to].count += static_cast<long>(ladder.size() - k - 1);
            return;
        }
    }

    /// The first rule on both parts that moves with the rating of the device.
    static std::size_t find_first_moving() {
        const auto& rules = rules::rulebook();
        for (std::size_t i = 0; i < rule_count; ++i) {
            if (rules[i].info->sees == Sees::both && rules[i].info->larger != rules::Trend::none) {
                return i;
            }
        }
        return rule_count;
    }

    /// Of the heads that fail one rule only, the nearest that would do with this route.
    void look_at_near_misses(RunScheme& scheme, const Part& part) {
        for (const std::size_t h : near_misses_) {
            const PartJudgement& judgement = head_parts_[h].judgement;
            const std::size_t rule = judgement.first_hard;
            const auto& finding = judgement.findings[rule];
            const long order = part.order + head_parts_[h].order;
            if (!nearer(result_.dropped[rule], finding, order)) continue;
            take(scheme, heads_[h]);
            if (failures_of_pair(scheme) == 0) {
                come_near(result_.dropped[rule], scheme, finding, order);
            }
        }
    }

    /// All schemes of a route that fails rule `index` however it is fed.
    void fall(RunScheme& scheme, const Part& part, std::size_t index) {
        Dropped& dropped = result_.dropped[index];
        dropped.count += static_cast<long>(heads_.size());
        const auto& finding = part.judgement.findings[index];
        if (!*dropped.says) dropped.says = finding.says;
        if (part.judgement.failures > 1 || !nearer(dropped, finding, part.order)) return;
        figures_ = part.judgement.figures;
        Silent silent;
        study::work_out(silent, judge_->setting(), scheme, study::Stage::current, figures_);
        for (const std::size_t h : by_key_) {
            if (head_parts_[h].judgement.failures > 0) continue;
            const long order = part.order + head_parts_[h].order;
            if (!nearer(dropped, finding, order)) return;
            take(scheme, heads_[h]);
            if (failures_of_pair(scheme) > 0) continue;
            come_near(dropped, scheme, finding, order);
            return;
        }
    }

    static bool nearer(const Dropped& dropped, const rules::Finding<Silent>& finding, long order) {
        if (!finding.limited || !std::isfinite(finding.use) || finding.use <= 1) return false;
        return !dropped.nearest || finding.use < dropped.nearest_use ||
               (finding.use == dropped.nearest_use && order < dropped.nearest_order);
    }

    static void come_near(Dropped& dropped, const RunScheme& scheme,
                          const rules::Finding<Silent>& finding, long order) {
        dropped.nearest = scheme;
        dropped.nearest_use = finding.use;
        dropped.nearest_order = order;
    }

    /// Judges the rules that look at both parts; findings stay in pair_findings_. Figures of the
    /// route stay; those that hang on the head are worked out anew.
    std::size_t failures_of_pair(const RunScheme& scheme) {
        ++result_.evaluated;
        figures_.done = study::Stage::current;
        std::size_t failures = 0;
        for (std::size_t i = 0; i < rule_count; ++i) {
            if (rules::rulebook()[i].info->sees != Sees::both) continue;
            pair_findings_[i] = judge_->judge(i, scheme, figures_);
            failures += pair_findings_[i].verdict == Verdict::fails;
        }
        return failures;
    }

    /// The rule to which the pair fell, or rule_count when it was kept.
    std::size_t pair(const RunScheme& scheme, const Part& part, std::size_t h) {
        const Part& head = head_parts_[h];
        const std::size_t failures = failures_of_pair(scheme);
        for (std::size_t i = 0; failures > 0 && i < rule_count; ++i) {
            if (rules::rulebook()[i].info->sees != Sees::both ||
                pair_findings_[i].verdict != Verdict::fails || judge_->may_meet(i, scheme)) {
                continue;
            }
            const bool alone =
                failures == 1 && part.judgement.failures == 0 && head.judgement.failures == 0;
            drop(scheme, i, alone, part.order + head.order);
            return i;
        }
        keep(scheme, part, head, failures);
        return rule_count;
    }

    void drop(const RunScheme& scheme, std::size_t index, bool alone, long order) {
        Dropped& dropped = result_.dropped[index];
        const auto& finding = pair_findings_[index];
        ++dropped.count;
        if (!*dropped.says) dropped.says = finding.says;
        if (alone && nearer(dropped, finding, order)) come_near(dropped, scheme, finding, order);
    }

    void keep(const RunScheme& scheme, const Part& part, const Part& head, std::size_t failures) {
        Sound s;
        s.scheme = scheme;
        s.dependability = part.dependability;
        s.order = part.order + head.order;
        s.total = together(part.price, head.price).total.number();
        s.headroom = 1;
        for (std::size_t i = 0; i < rule_count; ++i) {
            const Sees sees = rules::rulebook()[i].info->sees;
            const auto& finding = sees == Sees::run    ? part.judgement.findings[i]
                                  : sees == Sees::head ? head.judgement.findings[i]
                                                       : pair_findings_[i];
            s.verdicts[i] =
                finding.verdict == Verdict::fails ? Verdict::not_known : finding.verdict;
            count_headroom(finding, s.headroom, s.governed_by);
        }
        const bool sure = failures + part.judgement.failures + head.judgement.failures == 0;
        (sure ? sound_ : unsure_).push_back(s);
    }

    /// The price of a scheme from that of its run with another head and of its head on another run.
    price::Price<Silent> together(const price::Price<Silent>& run,
                                  const price::Price<Silent>& head) const {
        price::Price<Silent> p = run;
        p.house_end = head.house_end;
        p.remedies = run.remedies + head.remedies;
        price::add_up(p, book_);
        return p;
    }

    /// As dependable as its least dependable stretch.
    double rank_of(const RunScheme& scheme) const {
        double worst = std::numeric_limits<double>::max();
        for (const study::Stretch& laid : scheme.laid()) {
            worst = std::min(worst, rank_of(scheme.earthing, laid.protective));
        }
        return worst;
    }

    double rank_of(study::BuildingEarthing earthing, study::Protective protective) const {
        for (const tables::Dependability& row : catalogue_.dependability) {
            if (row.earthing == study::earthing_word(earthing) &&
                row.protective == study::protective_word(protective)) {
                return row.rank.value;
            }
        }
        return 0;
    }

    Result finish() {
        result_.sound = static_cast<long>(sound_.size());
        result_.conditional = static_cast<long>(unsure_.size());
        show(sound_);
        show(unsure_);
        auto& dropped = result_.dropped;
        dropped.erase(std::remove_if(dropped.begin(), dropped.end(),
                                     [](const Dropped& d) { return d.count == 0; }),
                      dropped.end());
        return std::move(result_);
    }

    void show(std::vector<Sound>& found) {
        const std::size_t shown = result_.contenders.size();
        const std::size_t room = options_.all            ? std::numeric_limits<std::size_t>::max()
                                 : options_.most > shown ? options_.most - shown
                                                         : 0;
        for (const Sound& s : kept(found, prefer_, room)) {
            result_.contenders.push_back(contender(s));
        }
    }

    Contender contender(const Sound& s) {
        Contender c;
        static_cast<Sound&>(c) = s;
        c.key = study::scheme_key(s.scheme);
        const Judge& judge = judge_for(s.scheme);
        std::vector<price::Item> remedies;
        Evaluation evaluation;
        evaluate(judge.setting(), s.scheme, evaluation);
        for (const auto& finding : evaluation.findings) {
            bool has = false;
            const price::Item item = price::item_of(finding.remedy, has);
            if (has) remedies.push_back(item);
        }
        Silent silent;
        c.price = price::price_of(silent, book_, judge.setting(), s.scheme, remedies);
        c.conditional_on = judge.hangs_on(s.scheme, s.verdicts);
        return c;
    }

    const Judge& judge_for(const RunScheme& scheme) const {
        for (const Judge& judge : judges_) {
            if (judge.setting().phases == scheme.phases) return judge;
        }
        return judges_.front();
    }

    const tables::Catalogue& catalogue_;
    const price::Book& book_;
    site::Prefer prefer_;
    Options options_;
    std::vector<Judge> judges_;  ///< one for each number of phases
    const Judge* judge_ = nullptr;
    std::vector<Head> heads_;
    std::vector<Part> head_parts_;
    std::vector<std::size_t> by_key_;  ///< heads in order of their keys
    std::vector<Ladder> ladders_;
    std::vector<std::size_t> near_misses_;   ///< heads, by how much they miss
    std::array<long, rule_count> fallen_{};  ///< heads that fall by themselves, by rule
    std::array<const char*, rule_count> fallen_says_{};
    const std::size_t first_moving_ = find_first_moving();
    study::Figures<Silent> figures_;
    std::array<rules::Finding<Silent>, rule_count> pair_findings_;
    std::vector<Sound> sound_;
    std::vector<Sound> unsure_;
    Result result_;
};

}  // namespace

Result search(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
              std::size_t run_index, const Options& options) {
    return Searcher(catalogue, book, job, run_index, options).run();
}

}  // namespace toft::search
