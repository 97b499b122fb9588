#include "tolerance/chance.h"

#include "tolerance/halton.h"
#include "tolerance/quantile.h"
#include "tolerance/tally.h"

#include <algorithm>

namespace toft::tolerance {

namespace {

/// Where every sample takes a setting of its own there are so many times fewer.
constexpr std::size_t fewer = 32;
constexpr std::size_t batches_of_one_by_one = 8;

/// What a pool leaves open: half the share that one of its values stands for.
double grain_of(const Blend& blend) {
    double grain = 0;
    for (std::size_t g = 0; g < blend.groups(); ++g) {
        grain = std::max(grain, 0.5 / static_cast<double>(blend.pool_of(g)));
    }
    return grain;
}

}  // namespace

Chances chances(const Subject& subject, const std::array<bool, rules::rule_count>& sure,
                const Wish& wish) {
    Tally tally(subject.scheme, sure);
    if (tally.nothing_to_do()) return {};
    Blend blend(subject.place, subject.varied, wish.pool);
    if (tally_blend(subject, blend, tally, wish.samples)) {
        Chances out = tally.result(grain_of(blend));
        for (std::size_t g = 0; g < blend.groups(); ++g) out.prepared += blend.pool_of(g);
        return out;
    }
    return chances_one_by_one(subject, sure, wish.samples / fewer);
}

Chances chances_one_by_one(const Subject& subject, const std::array<bool, rules::rule_count>& sure,
                           std::size_t samples) {
    Tally tally(subject.scheme, sure);
    if (tally.nothing_to_do()) return {};
    const std::vector<Varied>& varied = subject.varied;
    std::vector<double> values(varied.size());
    // More figures than there are directions: the last ones share theirs, half a length apart.
    const std::size_t directions = std::min(varied.size(), primes.size());
    for (std::size_t batch = 0; batch < batches_of_one_by_one; ++batch) {
        Halton points(directions, batch + 1);
        for (std::size_t n = 0; n < samples / batches_of_one_by_one; ++n) {
            const auto& point = points.next();
            for (std::size_t i = 0; i < varied.size(); ++i) {
                const Varied& v = varied[i];
                values[i] = quantile(v.spread, v.low, v.high, point[i % primes.size()]);
            }
            tally.count(prepared_in(subject.place, job_at(subject.place.job, varied, values)));
        }
        tally.close();
    }
    Chances out = tally.result(0);
    out.prepared = out.samples;
    return out;
}

}  // namespace toft::tolerance
