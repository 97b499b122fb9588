#pragma once
// The search without cleverness: every head on every route, every rule, at the worse end of all
// open facts and at the three kinder ones. Uses evaluate() and the lists of candidates, nothing
// else of the search. Header only, so that the benches may use it as a peer.

#include "loss/energy.h"
#include "price/price.h"
#include "search/candidates.h"
#include "search/evaluate.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace toft::support {

/// A scheme that is sound, or would be if open facts turned out well.
struct BruteSound {
    study::RunScheme scheme;
    std::string key;
    double total = 0;
    double headroom = 0;
    double dependability = 0;
    double lost = 0;  ///< energy over the years, pounds
    std::array<rules::Verdict, rules::rule_count> verdicts{};
};

/// Counts by rule.
using Tally = std::array<long, rules::rule_count>;

struct BruteResult {
    long candidates = 0;
    std::vector<BruteSound> sound;
    std::vector<BruteSound> conditional;
    Tally failing{};  ///< schemes that fail the rule at every end, whatever else they fail
    Tally first{};    ///< … and no rule that is asked before it: of the run, of the head, of both
    std::array<std::optional<double>, rules::rule_count> nearest_use;  ///< of those that fail no
                                                                       ///< other rule
};

/// Price of the scheme with all that its findings ask to be put right first.
inline double brute_price(const price::Book& book, const study::Setting<Silent>& setting,
                          const search::Evaluation& evaluation, const study::RunScheme& scheme) {
    std::vector<price::Item> remedies;
    for (const auto& finding : evaluation.findings) {
        std::vector<std::string> words{finding.remedy};
        for (const char* word : finding.remedies) words.emplace_back(word ? word : "");
        for (const std::string& word : words) {
            bool found = false;
            const price::Item item = price::item_of(word, found);
            if (found && !std::count(remedies.begin(), remedies.end(), item)) {
                remedies.push_back(item);
            }
        }
    }
    Silent silent;
    return price::price_of(silent, book, setting, scheme,
                           {remedies, price::wired(evaluation.figures)})
        .total.number();
}

/// Rank of the least dependable stretch.
inline double brute_rank(const tables::Catalogue& catalogue, const study::RunScheme& scheme) {
    double worst = std::numeric_limits<double>::infinity();
    for (const study::Stretch& laid : scheme.laid()) {
        double rank = 0;
        for (const tables::Dependability& row : catalogue.dependability) {
            if (row.earthing == study::earthing_word(scheme.earthing) &&
                row.protective == study::protective_word(laid.protective)) {
                rank = row.rank.value;
            }
        }
        worst = std::min(worst, rank);
    }
    return worst;
}

/// One scheme by every rule at every end of the open facts.
struct BruteJudgement {
    search::Evaluation worse;
    std::array<bool, rules::rule_count> hard{};  ///< fails at every end
    int failures = 0;                            ///< at the worse end
};

class BruteForce {
public:
    BruteForce(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job)
        : catalogue_(catalogue), book_(book) {
        using study::End;
        Silent silent;
        for (const int phases : study::phase_choices(job, 0)) {
            Ends ends;
            for (End end : {End::worse, End::better, End::low, End::high}) {
                study::Corner corner;
                corner.all = end;
                ends.push_back(
                    study::prepare(silent, catalogue, job, study::RunAt{0, phases}, corner));
            }
            settings_.push_back(std::move(ends));
        }
    }

    BruteResult run() {
        for (const Ends& ends : settings_) {
            const search::Shop shop = search::shop_for(ends[0]);
            const std::vector<search::Head> heads = search::heads_of(shop, ends[0]);
            for (const search::Route& route : search::routes_of(shop, ends[0])) {
                for (const search::Head& head : heads) count(ends, search::scheme_of(route, head));
            }
        }
        return std::move(result_);
    }

    BruteJudgement judge(const study::RunScheme& scheme) const {
        for (const Ends& ends : settings_) {
            if (ends[0].phases == scheme.phases) return judge(ends, scheme);
        }
        return {};
    }

private:
    using Ends = std::vector<study::Setting<Silent>>;

    BruteJudgement judge(const Ends& ends, const study::RunScheme& scheme) const {
        BruteJudgement j;
        search::evaluate(ends[0], scheme, j.worse);
        if (j.worse.worst != rules::Verdict::fails) return j;
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            j.hard[i] = fails(j.worse, i);
            j.failures += j.hard[i];
        }
        search::Evaluation kinder;
        for (std::size_t end = 1; end < ends.size(); ++end) {
            search::evaluate(ends[end], scheme, kinder);
            for (std::size_t i = 0; i < rules::rule_count; ++i) j.hard[i] &= fails(kinder, i);
        }
        return j;
    }

    static bool fails(const search::Evaluation& e, std::size_t rule) {
        return e.findings[rule].verdict == rules::Verdict::fails;
    }

    void count(const Ends& ends, const study::RunScheme& scheme) {
        ++result_.candidates;
        const BruteJudgement j = judge(ends, scheme);
        if (j.failures == 0) {
            result_.sound.push_back(entry(ends[0], scheme, j.worse));
        } else if (std::none_of(j.hard.begin(), j.hard.end(), [](bool hard) { return hard; })) {
            result_.conditional.push_back(entry(ends[0], scheme, j.worse));
        } else {
            drop(j);
        }
    }

    void drop(const BruteJudgement& j) {
        using rules::Sees;
        std::optional<std::size_t> first;
        for (const Sees sees : {Sees::run, Sees::head, Sees::both}) {
            for (std::size_t i = 0; i < rules::rule_count; ++i) {
                if (!j.hard[i] || rules::rulebook()[i].info->sees != sees) continue;
                ++result_.failing[i];
                if (!first) first = i;
            }
        }
        ++result_.first[*first];
        const auto& finding = j.worse.findings[*first];
        if (j.failures > 1 || !finding.limited || !std::isfinite(finding.use)) return;
        auto& nearest = result_.nearest_use[*first];
        if (finding.use > 1 && (!nearest || finding.use < *nearest)) nearest = finding.use;
    }

    BruteSound entry(const study::Setting<Silent>& setting, const study::RunScheme& scheme,
                     const search::Evaluation& e) const {
        BruteSound s{
            scheme,     study::scheme_key(scheme),      brute_price(book_, setting, e, scheme),
            e.headroom, brute_rank(catalogue_, scheme), 0,
            {}};
        Silent silent;
        s.lost = loss::over_years(book_, setting, e.figures, loss::year_of(silent, setting)).pounds;
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            const rules::Verdict v = e.findings[i].verdict;
            s.verdicts[i] = v == rules::Verdict::fails ? rules::Verdict::not_known : v;
        }
        return s;
    }

    const tables::Catalogue& catalogue_;
    const price::Book& book_;
    std::vector<Ends> settings_;  ///< by number of phases; the worse end first
    BruteResult result_;
};

}  // namespace toft::support
