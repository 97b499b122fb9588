#include "tolerance/tally.h"

#include "tolerance/halton.h"

#include <algorithm>
#include <cmath>

namespace toft::tolerance {

namespace {

constexpr std::size_t batches = 8;
constexpr std::size_t compared = 24;

/// With so many samples and none on the other side, the share there is below this over their number
/// with a certainty of 95 in 100.
constexpr double rule_of_three = 3;

void put_all(Blend& blend, const std::vector<double>& point, std::vector<std::size_t>& at) {
    for (std::size_t g = 0; g < blend.groups(); ++g) {
        const std::size_t pool = blend.pool_of(g);
        at[g] = std::min(pool - 1, static_cast<std::size_t>(point[g] * static_cast<double>(pool)));
        blend.put(g, at[g]);
    }
}

/// Whether blended settings judge as those of jobs prepared anew.
bool agrees(const Subject& subject, Blend& blend, const Tally& fresh) {
    Halton points(blend.groups(), batches + 1);
    std::vector<std::size_t> at(blend.groups());
    Tally blended = fresh;
    Tally anew = fresh;
    for (std::size_t n = 0; n < compared; ++n) {
        put_all(blend, points.next(), at);
        blended.count(blend.setting());
        const site::Job job = job_at(subject.place.job, subject.varied, blend.values_at(at));
        anew.count(prepared_in(subject.place, job));
        if (!blended.same_as(anew)) return false;
    }
    return true;
}

}  // namespace

Tally::Tally(const study::RunScheme& scheme, const std::array<bool, rules::rule_count>& sure)
    : scheme_(scheme) {
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (!sure[i] && !rules[i].info->only_cautions) rules_[count_++] = i;
    }
    for (Counted& counted : by_rule_) counted.batches.reserve(batches);
    all_.batches.reserve(batches);
}

void Tally::count(const study::Setting<Silent>& setting) {
    Silent silent;
    const auto& rules = rules::rulebook();
    figures_.done = study::Stage::none;
    figures_.circuits_done = false;
    bool all = true;
    for (std::size_t k = 0; k < count_; ++k) {
        const std::size_t i = rules_[k];
        study::work_out(silent, setting, scheme_, rules[i].info->needs, figures_);
        const auto finding = rules[i].judge(silent, {setting, scheme_, figures_});
        holds_[k] = finding.verdict != rules::Verdict::fails;
        use_[k] = finding.limited ? finding.use : 0;
        largest_[k] = std::max(largest_[k], use_[k]);
        by_rule_[k].held += holds_[k] ? 1 : 0;
        all = all && holds_[k];
    }
    all_.held += all ? 1 : 0;
    ++in_batch_;
    ++samples_;
}

void Tally::close() {
    const auto n = static_cast<double>(in_batch_);
    const auto shut = [n](Counted& counted) {
        counted.batches.push_back(static_cast<double>(counted.held) / n);
        counted.held = 0;
    };
    for (std::size_t k = 0; k < count_; ++k) shut(by_rule_[k]);
    shut(all_);
    in_batch_ = 0;
}

Share Tally::share_of(const Counted& counted, double grain) const {
    const auto n = static_cast<double>(counted.batches.size());
    double mean = 0;
    for (const double share : counted.batches) mean += share / n;
    double squares = 0;
    for (const double share : counted.batches) squares += (share - mean) * (share - mean);
    const double error = n > 1 ? 2 * std::sqrt(squares / (n - 1) / n) : 0;
    const double told = rule_of_three / static_cast<double>(samples_);
    return {mean, std::max(error + grain, told)};
}

Chances Tally::result(double grain) const {
    Chances out;
    for (std::size_t k = 0; k < count_; ++k) {
        out.by_rule[rules_[k]] = share_of(by_rule_[k], grain);
        out.largest[rules_[k]] = largest_[k];
    }
    if (count_ > 0) out.all = share_of(all_, grain);
    out.samples = samples_;
    return out;
}

bool Tally::same_as(const Tally& other) const {
    for (std::size_t k = 0; k < count_; ++k) {
        const bool endless = std::isnan(use_[k]) && std::isnan(other.use_[k]);
        if (holds_[k] != other.holds_[k]) return false;
        if (use_[k] != other.use_[k] && !endless) return false;
    }
    return true;
}

bool tally_blend(const Subject& subject, Blend& blend, Tally& tally, std::size_t samples) {
    if (!blend.possible() || !agrees(subject, blend, tally)) return false;
    std::vector<std::size_t> at(blend.groups());
    const bool whole = blend.groups() == 1;  // one pool is counted through, each value once
    const std::size_t of_one = whole ? 1 : batches;
    for (std::size_t batch = 0; batch < of_one; ++batch) {
        Halton points(blend.groups(), batch + 1);
        const std::size_t n = whole ? blend.pool_of(0) : samples / batches;
        for (std::size_t k = 0; k < n; ++k) {
            if (whole) {
                blend.put(0, k);
            } else {
                put_all(blend, points.next(), at);
            }
            tally.count(blend.setting());
        }
        tally.close();
    }
    return true;
}

}  // namespace toft::tolerance
