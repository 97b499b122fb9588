#include "earth/rod_group.h"

namespace toft::earth {

namespace {

template <class L>
Trust trust_in(const RodGroup<L>& rods) {
    return plain(rods.spacing) < plain(rods.length) ? Trust::outside : Trust::within;
}

Trust trust_in_table(const std::vector<TablePoint>& lambda, double count, Trust otherwise) {
    const bool covered = lambda.front().x <= count && count <= lambda.back().x;
    return covered ? otherwise : Trust::unsafe;
}

/// R1 (1 + lambda alpha)/number.
template <class L>
Estimate<L> by_lambda(L& ledger, const Name& name, const std::vector<TablePoint>& lambda,
                      const RodGroup<L>& rods, double number) {
    const auto single = ledger.let(
        {"R.rod", "one rod alone", name.part, "", "BS 7430, 9.5.3"},
        rods.resistivity / (2 * pi * rods.length) * (ln(8.0 * rods.length / rods.diameter) - 1.0));
    const auto alpha =
        ledger.let({"rods.alpha", "share of its neighbour that a rod feels", name.part},
                   rods.resistivity / (2 * pi * single * rods.spacing));
    const auto factor = read_between(ledger,
                                     {{"lambda.below", "factor for fewer rods", name.part},
                                      {"lambda.above", "factor for more rods", name.part},
                                      {"rods.lambda", "factor of the arrangement", name.part}},
                                     lambda.data(), lambda.size(), rods.count);
    return {ledger.let(name, single * (1.0 + factor * alpha) / number),
            trust_in_table(lambda, rods.count, trust_in<L>(rods))};
}

}  // namespace

template <class L>
Estimate<L> rods_in_line(L& ledger, const Name& name, const std::vector<TablePoint>& lambda,
                         const RodGroup<L>& rods) {
    return by_lambda(ledger, name, lambda, rods, rods.count);
}

template <class L>
Estimate<L> rods_in_square(L& ledger, const Name& name, const std::vector<TablePoint>& lambda,
                           const RodGroup<L>& rods) {
    return by_lambda(ledger, name, lambda, rods, 4 * (rods.count - 1));
}

template <class L>
Estimate<L> rods_in_triangle(L& ledger, const Name& name, const RodGroup<L>& rods) {
    const auto r = ledger.let(
        name, rods.resistivity / (6 * pi * rods.length) *
                  (ln(8.0 * rods.length / rods.diameter) - 1.0 + 2.0 * rods.length / rods.spacing));
    return {r, trust_in<L>(rods)};
}

template Estimate<Silent> rods_in_line(Silent&, const Name&, const std::vector<TablePoint>&,
                                       const RodGroup<Silent>&);
template Estimate<Recording> rods_in_line(Recording&, const Name&, const std::vector<TablePoint>&,
                                          const RodGroup<Recording>&);
template Estimate<Silent> rods_in_square(Silent&, const Name&, const std::vector<TablePoint>&,
                                         const RodGroup<Silent>&);
template Estimate<Recording> rods_in_square(Recording&, const Name&, const std::vector<TablePoint>&,
                                            const RodGroup<Recording>&);
template Estimate<Silent> rods_in_triangle(Silent&, const Name&, const RodGroup<Silent>&);
template Estimate<Recording> rods_in_triangle(Recording&, const Name&, const RodGroup<Recording>&);

}  // namespace toft::earth
