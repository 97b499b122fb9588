#include "earthing/main_bonding.h"

namespace toft::study {

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_combined(L& ledger, const Setting<L>& s) {
    const SquareMillimetres neutral = plain(s.house.neutral_most);
    const auto& steps = s.catalogue->main_bonding;
    std::size_t i = 0;
    while (i + 1 < steps.size() && neutral > steps[i].to) ++i;
    return ledger.table(
        {"Sb.min", "main bonding asked for by the operator's neutral", 0, "", "Table 54.8"},
        steps[i].bond);
}

template <class L>
ValueIn<L, SquareMillimetres> bonding_for_separate(L& ledger, const Setting<L>& s,
                                                   const ValueIn<L, SquareMillimetres>& earthing) {
    const tables::Limits& limits = s.catalogue->limits;
    const auto half = ledger.table({"half", "share of the earthing conductor"}, limits.bond_half);
    const auto floor = ledger.table({"Sb.floor", "smallest main bonding"}, limits.bond_min);
    const auto ceiling =
        ledger.table({"Sb.ceiling", "main bonding need not exceed"}, limits.bond_max);
    return ledger.let({"Sb.min", "main bonding asked for", 0, "", "544.1.1"},
                      least(most(earthing * half, floor), ceiling));
}

template <class L>
ValueIn<L, SquareMillimetres> bonding_asked(L& ledger, const Setting<L>& s) {
    return s.supply.system == site::Earthing::tn_c_s
               ? bonding_for_combined(ledger, s)
               : bonding_for_separate(ledger, s, s.house.earthing_most);
}

SquareMillimetres local_bond(const Setting<Silent>& s, BuildingEarthing earthing) {
    Silent silent;
    SquareMillimetres wanted = s.catalogue->limits.bond_least.value;
    if (earthing == BuildingEarthing::supply_earth) {
        wanted = most(wanted, bonding_asked(silent, s));
    }
    for (const tables::Conductor& sold : s.catalogue->separates) {
        if (sold.section >= wanted) return sold.section;
    }
    return wanted;
}

using Mm2 = SquareMillimetres;
template Mm2 bonding_for_combined(Silent&, const Setting<Silent>&);
template Traced<Mm2> bonding_for_combined(Recording&, const Setting<Recording>&);
template Mm2 bonding_for_separate(Silent&, const Setting<Silent>&, const Mm2&);
template Traced<Mm2> bonding_for_separate(Recording&, const Setting<Recording>&,
                                          const Traced<Mm2>&);
template Mm2 bonding_asked(Silent&, const Setting<Silent>&);
template Traced<Mm2> bonding_asked(Recording&, const Setting<Recording>&);

}  // namespace toft::study
