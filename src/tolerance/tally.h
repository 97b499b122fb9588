#pragma once
// Counting which rules hold, sample after sample.

#include "tolerance/blend.h"
#include "tolerance/chance.h"

namespace toft::tolerance {

/// Rules that have to be looked at, judged on one setting after another. Allocates nothing.
class Tally {
public:
    Tally(const study::RunScheme& scheme, const std::array<bool, rules::rule_count>& sure);

    bool nothing_to_do() const { return count_ == 0; }

    /// Judges the rules on the setting and counts.
    void count(const study::Setting<Silent>& setting);

    /// Closes a batch: what was counted since the last is one estimate of each share.
    void close();

    /// The shares over all batches, which were of one size. `grain` is what the values of pools
    /// leave open.
    Chances result(double grain) const;

    /// Use and verdict of every rule that is looked at, of the last setting.
    bool same_as(const Tally& other) const;

private:
    struct Counted {
        std::vector<double> batches;
        std::size_t held = 0;
    };
    Share share_of(const Counted& counted, double grain) const;

    const study::RunScheme& scheme_;
    std::array<std::size_t, rules::rule_count> rules_{};  ///< the first count_
    std::size_t count_ = 0;
    std::array<Counted, rules::rule_count> by_rule_;
    std::array<double, rules::rule_count> use_{};
    std::array<bool, rules::rule_count> holds_{};
    std::array<double, rules::rule_count> largest_{};
    Counted all_;
    std::size_t in_batch_ = 0;
    std::size_t samples_ = 0;
    study::Figures<Silent> figures_;
};

/// Counts the values of the pools, spread evenly, in batches; returns whether the settings were
/// those of jobs prepared anew, which is tried first.
bool tally_blend(const Subject& subject, Blend& blend, Tally& tally, std::size_t samples);

}  // namespace toft::tolerance
