#include "search/search.h"

#include "search/judge.h"
#include "search/keep.h"

#include <algorithm>
#include <cmath>
#include <limits>

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

class Searcher {
public:
    Searcher(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
             std::size_t run_index, const Options& options)
        : catalogue_(catalogue),
          book_(book),
          prefer_(job.wishes.prefer),
          options_(options),
          judge_(catalogue, job, run_index, options.corner) {
        for (const rules::Rule& rule : rules::rulebook()) {
            result_.dropped.push_back({rule.info, 0, std::nullopt, 0, ""});
        }
    }

    Result run() {
        const Shop shop = shop_for(judge_.setting());
        cores_ = cores_of(shop);
        heads_ = heads_of(shop);
        result_.candidates = static_cast<long>(cores_.size() * heads_.size());
        if (result_.candidates == 0) return finish();
        judge_heads();
        std::vector<std::string> keys;
        for (const Core& c : cores_) keys.push_back(study::run_key(scheme_of(c, heads_.front())));
        const std::vector<long> order = places(keys);
        Part core;
        for (std::size_t i = 0; i < cores_.size(); ++i) {
            const Core& c = cores_[i];
            const RunScheme scheme = scheme_of(c, heads_.front());
            core.order = order[i] * static_cast<long>(heads_.size());
            core.judgement.figures.done = study::Stage::none;
            judge_.judge_part(Sees::run, scheme, core.judgement);
            core.price = priced(scheme, core.judgement);
            core.dependability = rank_of(scheme);
            pair_up(c, core);
        }
        return finish();
    }

private:
    void judge_heads() {
        head_parts_.resize(heads_.size());
        std::vector<std::string> keys;
        for (const Head& head : heads_)
            keys.push_back(study::head_key(scheme_of(cores_.front(), head)));
        const std::vector<long> order = places(keys);
        for (std::size_t i = 0; i < heads_.size(); ++i) {
            head_parts_[i].order = order[i];
            const RunScheme scheme = scheme_of(cores_.front(), heads_[i]);
            judge_.judge_part(Sees::head, scheme, head_parts_[i].judgement);
            head_parts_[i].price = priced(scheme, head_parts_[i].judgement);
        }
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
        return price::price_of(silent, book_, judge_.setting(), scheme, remedies);
    }

    void pair_up(const Core& core, const Part& part) {
        if (part.judgement.first_hard != rule_count) {
            fall(core, part, part.judgement.first_hard);
            return;
        }
        if (part.judgement.failures == 0) {
            // Worked out once for all heads of this core.
            current_ = part.judgement.figures;
            Silent silent;
            study::work_out(silent, judge_.setting(), scheme_of(core, heads_.front()),
                            study::Stage::current, current_);
        } else {
            current_ = part.judgement.figures;
        }
        for (std::size_t h = 0; h < heads_.size(); ++h) pair(core, part, h);
    }

    /// All schemes of a run that fails rule `index` however it is fed.
    void fall(const Core& core, const Part& part, std::size_t index) {
        Dropped& dropped = result_.dropped[index];
        dropped.count += static_cast<long>(heads_.size());
        const auto& finding = part.judgement.findings[index];
        if (!*dropped.says) dropped.says = finding.says;
        if (part.judgement.failures > 1 || !nearer(dropped, finding)) return;
        current_ = part.judgement.figures;
        for (std::size_t h = 0; h < heads_.size(); ++h) {
            if (head_parts_[h].judgement.failures > 0) continue;
            const RunScheme scheme = scheme_of(core, heads_[h]);
            if (failures_of_pair(scheme) > 0) continue;
            dropped.nearest = scheme;
            dropped.nearest_use = finding.use;
            return;
        }
    }

    static bool nearer(const Dropped& dropped, const rules::Finding<Silent>& finding) {
        if (!finding.limited || !std::isfinite(finding.use) || finding.use <= 1) return false;
        return !dropped.nearest || finding.use < dropped.nearest_use;
    }

    /// Judges the rules that look at both parts; findings stay in pair_findings_.
    std::size_t failures_of_pair(const RunScheme& scheme) {
        ++result_.evaluated;
        figures_ = current_;
        std::size_t failures = 0;
        for (std::size_t i = 0; i < rule_count; ++i) {
            if (rules::rulebook()[i].info->sees != Sees::both) continue;
            pair_findings_[i] = judge_.judge(i, scheme, figures_);
            failures += pair_findings_[i].verdict == Verdict::fails;
        }
        return failures;
    }

    void pair(const Core& core, const Part& part, std::size_t h) {
        const Part& head = head_parts_[h];
        const RunScheme scheme = scheme_of(core, heads_[h]);
        if (head.judgement.first_hard != rule_count) {
            drop_by_head(scheme, part, head);
            return;
        }
        const std::size_t failures = failures_of_pair(scheme);
        for (std::size_t i = 0; failures > 0 && i < rule_count; ++i) {
            if (rules::rulebook()[i].info->sees != Sees::both ||
                pair_findings_[i].verdict != Verdict::fails || judge_.may_meet(i, scheme)) {
                continue;
            }
            const bool alone =
                failures == 1 && part.judgement.failures == 0 && head.judgement.failures == 0;
            drop(scheme, i, pair_findings_[i], alone);
            return;
        }
        keep(scheme, part, head, failures);
    }

    void drop_by_head(const RunScheme& scheme, const Part& part, const Part& head) {
        const std::size_t i = head.judgement.first_hard;
        const auto& finding = head.judgement.findings[i];
        const bool maybe = part.judgement.failures == 0 && head.judgement.failures == 1 &&
                           nearer(result_.dropped[i], finding);
        drop(scheme, i, finding, maybe && failures_of_pair(scheme) == 0);
    }

    void drop(const RunScheme& scheme, std::size_t index, const rules::Finding<Silent>& finding,
              bool alone) {
        Dropped& dropped = result_.dropped[index];
        ++dropped.count;
        if (!*dropped.says) dropped.says = finding.says;
        if (!alone || !nearer(dropped, finding)) return;
        dropped.nearest = scheme;
        dropped.nearest_use = finding.use;
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

    double rank_of(const RunScheme& scheme) const {
        for (const tables::Dependability& row : catalogue_.dependability) {
            if (row.earthing == study::earthing_word(scheme.earthing) &&
                row.protective == study::protective_word(scheme.protective)) {
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
        std::vector<price::Item> remedies;
        Evaluation evaluation;
        evaluate(judge_.setting(), s.scheme, evaluation);
        for (const auto& finding : evaluation.findings) {
            bool has = false;
            const price::Item item = price::item_of(finding.remedy, has);
            if (has) remedies.push_back(item);
        }
        Silent silent;
        c.price = price::price_of(silent, book_, judge_.setting(), s.scheme, remedies);
        c.conditional_on = judge_.hangs_on(s.scheme, s.verdicts);
        return c;
    }

    const tables::Catalogue& catalogue_;
    const price::Book& book_;
    site::Prefer prefer_;
    Options options_;
    Judge judge_;
    std::vector<Core> cores_;
    std::vector<Head> heads_;
    std::vector<Part> head_parts_;
    study::Figures<Silent> current_;
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
