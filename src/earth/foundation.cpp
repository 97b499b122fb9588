#include "earth/foundation.h"

namespace toft::earth {

template <class L>
Estimate<L> encased_rod(L& ledger, const Name& name, const EncasedRod<L>& rod) {
    const auto outer =
        ledger.let({"R.column", "from the concrete outwards", name.part},
                   rod.soil / (2 * pi * rod.length) * (ln(8.0 * rod.length / rod.column) - 1.0));
    const auto inner = ledger.let({"R.concrete", "through the concrete", name.part},
                                  rod.concrete / (2 * pi * rod.length) * ln(rod.column / rod.rod));
    const auto r = ledger.let(name, outer + inner);
    const bool slender = plain(rod.length) >= 4.0 * plain(rod.column);
    return {r, slender ? Trust::within : Trust::outside};
}

template <class L>
Estimate<L> foundation_member(L& ledger, const Name& name, const FoundationMember<L>& member) {
    const auto r =
        ledger.let(name, ((member.concrete - member.soil) * ln(1.0 + member.cover / member.bars) +
                          member.soil * ln(2.0 * member.length / member.bars)) /
                             (2 * pi * member.length));
    return {r, member.membrane ? Trust::unsafe : Trust::outside};
}

template <class L>
ValueIn<L, Metres> two_bars(L& ledger, const Name& name, const ValueIn<L, Metres>& radius,
                            const ValueIn<L, Metres>& spacing) {
    return ledger.let(name, root(radius * spacing));
}

template Estimate<Silent> encased_rod(Silent&, const Name&, const EncasedRod<Silent>&);
template Estimate<Recording> encased_rod(Recording&, const Name&, const EncasedRod<Recording>&);
template Estimate<Silent> foundation_member(Silent&, const Name&, const FoundationMember<Silent>&);
template Estimate<Recording> foundation_member(Recording&, const Name&,
                                               const FoundationMember<Recording>&);
template Metres two_bars<Silent>(Silent&, const Name&, const Metres&, const Metres&);
template Traced<Metres> two_bars<Recording>(Recording&, const Name&, const Traced<Metres>&,
                                            const Traced<Metres>&);

}  // namespace toft::earth
