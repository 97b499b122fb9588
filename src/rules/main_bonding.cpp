#include "rules/main_bonding.h"

namespace toft::rules {

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_combined(L& ledger, const Case<L>& c) {
    const SquareMillimetres neutral = plain(c.setting.house.neutral_most);
    const auto& steps = c.setting.catalogue->main_bonding;
    std::size_t i = 0;
    while (i + 1 < steps.size() && neutral > steps[i].to) ++i;
    return ledger.table(
        {"Sb.min", "main bonding asked for by the operator's neutral", 0, "", "Table 54.8"},
        steps[i].bond);
}

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_separate(L& ledger, const Case<L>& c,
                                                   const ValueIn<L, SquareMillimetres>& earthing) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    const auto half = ledger.table({"half", "share of the earthing conductor"}, limits.bond_half);
    const auto floor = ledger.table({"Sb.floor", "smallest main bonding"}, limits.bond_min);
    const auto ceiling =
        ledger.table({"Sb.ceiling", "main bonding need not exceed"}, limits.bond_max);
    return ledger.let({"Sb.min", "main bonding asked for", 0, "", "544.1.1"},
                      least(most(earthing * half, floor), ceiling));
}

using Mm2 = SquareMillimetres;
template Mm2 bonding_for_combined(Silent&, const Case<Silent>&);
template Traced<Mm2> bonding_for_combined(Recording&, const Case<Recording>&);
template Mm2 bonding_for_separate(Silent&, const Case<Silent>&, const Mm2&);
template Traced<Mm2> bonding_for_separate(Recording&, const Case<Recording>&, const Traced<Mm2>&);

}  // namespace toft::rules
