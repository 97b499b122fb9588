#include "cable/harmonics.h"

namespace toft::cable {

namespace {

using tables::HarmonicStep;

/// Neutral over line of even lines with that share.
double even_neutral(double percent) { return 3 * percent / 100; }

/// What the row leaves to the line current at its end.
double at_end(const HarmonicStep& step) {
    const double neutral = even_neutral(step.to);
    return step.by_neutral && neutral > 1 ? step.factor.value / neutral : step.factor.value;
}

}  // namespace

template <class L>
ValueIn<L, double> harmonic_factor(L& ledger, const std::vector<HarmonicStep>& steps,
                                   const ThirdHarmonics<L>& load) {
    const HarmonicStep* row = nullptr;
    const HarmonicStep* harshest = nullptr;  // of those before it
    for (const HarmonicStep& step : steps) {
        if (row && plain(load.share) <= row->to) break;
        if (row && (!harshest || at_end(*row) < at_end(*harshest))) harshest = row;
        row = &step;
    }
    const int n = load.number;
    const Name name{"Ch", "factor for third harmonics", n, "", "Appendix 4, 5.5"};
    if (!row) return ledger.stated(name, 1.0, "no factor is tabulated");
    const auto k =
        ledger.table({"k.h", "tabulated factor for so much third harmonic", n}, row->factor);
    const auto over = ledger.let({"n.over", "neutral over line, where that is more than one", n},
                                 most(load.neutral, 1.0));
    const auto own =
        row->by_neutral
            ? ledger.let({"Ch.row", "by the neutral's current", n}, k / over)
            : ledger.let({"Ch.row", "by the lines' current; the neutral within the rating", n},
                         least(k, 1.0 / over));
    if (!harshest || at_end(*harshest) >= plain(own)) return ledger.let(name, own * 1.0);
    const auto before = ledger.table({"k.before", "tabulated factor of the harshest row before", n},
                                     harshest->factor);
    const auto end = ledger.stated({"n.before", "neutral over line at the end of that row", n},
                                   most(harshest->by_neutral ? even_neutral(harshest->to) : 1, 1.0),
                                   "three lines alike");
    return ledger.let(name, least(own, before / end));
}

template double harmonic_factor(Silent&, const std::vector<HarmonicStep>&,
                                const ThirdHarmonics<Silent>&);
template Traced<double> harmonic_factor(Recording&, const std::vector<HarmonicStep>&,
                                        const ThirdHarmonics<Recording>&);

}  // namespace toft::cable
