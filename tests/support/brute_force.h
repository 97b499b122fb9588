#pragma once
// The search without cleverness: every head on every core, every rule, at the worse end of all open
// facts and at the three kinder ones. Uses evaluate() and the lists of candidates, nothing else of
// the search. Header only, so that the benches may use it as a peer.

#include "price/price.h"
#include "search/candidates.h"
#include "search/evaluate.h"

#include <cmath>
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
    std::array<rules::Verdict, rules::rule_count> verdicts{};
};

struct BruteNearest {
    std::string key;
    double use = 0;
};

struct BruteResult {
    long candidates = 0;
    std::vector<BruteSound> sound;
    std::vector<BruteSound> conditional;
    std::array<long, rules::rule_count> dropped{};  ///< by the first rule that fails at every end
    std::array<std::optional<BruteNearest>, rules::rule_count> nearest;
    std::array<std::string, rules::rule_count> says;  ///< of the first that each rule dropped
};

/// Price of the scheme with all that its findings ask to be put right first.
inline double brute_price(const price::Book& book, const study::Setting<Silent>& setting,
                          const search::Evaluation& evaluation, const study::RunScheme& scheme) {
    std::vector<price::Item> remedies;
    for (const auto& finding : evaluation.findings) {
        bool found = false;
        const price::Item item = price::item_of(finding.remedy, found);
        if (found) remedies.push_back(item);
    }
    Silent silent;
    return price::price_of(silent, book, setting, scheme, remedies).total.number();
}

class BruteForce {
public:
    BruteForce(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job)
        : catalogue_(catalogue), book_(book) {
        using study::End;
        Silent silent;
        for (End end : {End::worse, End::better, End::low, End::high}) {
            study::Corner corner;
            corner.all = end;
            corners_.push_back(study::prepare(silent, catalogue, job, 0, corner));
        }
    }

    BruteResult run() {
        const search::Shop shop = search::shop_for(corners_[0]);
        for (const search::Core& core : search::cores_of(shop)) {
            for (const search::Head& head : search::heads_of(shop)) {
                judge(search::scheme_of(core, head));
            }
        }
        return std::move(result_);
    }

private:
    void judge(const study::RunScheme& scheme) {
        ++result_.candidates;
        search::Evaluation worse;
        search::evaluate(corners_[0], scheme, worse);
        if (worse.worst != rules::Verdict::fails) {
            result_.sound.push_back(entry(scheme, worse));
            return;
        }
        std::array<search::Evaluation, 3> kinder;
        for (std::size_t c = 0; c < 3; ++c) search::evaluate(corners_[c + 1], scheme, kinder[c]);
        int failures = 0;
        std::optional<std::size_t> first_hard;
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            if (worse.findings[i].verdict != rules::Verdict::fails) continue;
            ++failures;
            bool hard = true;
            for (const auto& k : kinder) {
                hard = hard && k.findings[i].verdict == rules::Verdict::fails;
            }
            if (hard && !first_hard) first_hard = i;
        }
        if (!first_hard) {
            result_.conditional.push_back(entry(scheme, worse));
        } else {
            drop(scheme, *first_hard, worse.findings[*first_hard], failures == 1);
        }
    }

    void drop(const study::RunScheme& scheme, std::size_t rule,
              const rules::Finding<Silent>& finding, bool alone) {
        ++result_.dropped[rule];
        if (result_.says[rule].empty()) result_.says[rule] = finding.says;
        if (!alone || !finding.limited || !std::isfinite(finding.use) || finding.use <= 1) return;
        auto& nearest = result_.nearest[rule];
        if (nearest && nearest->use <= finding.use) return;
        nearest = BruteNearest{study::scheme_key(scheme), finding.use};
    }

    BruteSound entry(const study::RunScheme& scheme, const search::Evaluation& e) const {
        BruteSound s{scheme,
                     study::scheme_key(scheme),
                     brute_price(book_, corners_[0], e, scheme),
                     e.headroom,
                     0,
                     {}};
        for (const tables::Dependability& row : catalogue_.dependability) {
            if (row.earthing == study::earthing_word(scheme.earthing) &&
                row.protective == study::protective_word(scheme.protective)) {
                s.dependability = row.rank.value;
            }
        }
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            const rules::Verdict v = e.findings[i].verdict;
            s.verdicts[i] = v == rules::Verdict::fails ? rules::Verdict::not_known : v;
        }
        return s;
    }

    const tables::Catalogue& catalogue_;
    const price::Book& book_;
    std::vector<study::Setting<Silent>> corners_;
    BruteResult result_;
};

}  // namespace toft::support
