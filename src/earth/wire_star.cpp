#include "earth/wire_star.h"

namespace toft::earth {

template <class L>
Estimate<L> wire_star(L& ledger, const Name& name, const tables::StarRow& row,
                      const WireStar<L>& star) {
    const auto c0 = ledger.table({"star.c0", "constant of the star", name.part}, row.c0);
    const auto c1 = ledger.table({"star.c1", "its first coefficient", name.part}, row.c1);
    const auto c2 = ledger.table({"star.c2", "its second coefficient", name.part}, row.c2);
    const auto c4 = ledger.table({"star.c4", "its fourth coefficient", name.part}, row.c4);
    const auto x = ledger.let({"star.x", "twice the depth over an arm", name.part},
                              2.0 * star.depth / star.arm);
    const auto log = ledger.let({"star.log", "logarithms of the star", name.part},
                                ln(2.0 * star.arm / star.radius) + ln(2.0 / x));
    const auto sum = ledger.let({"star.sum", "series of the star", name.part},
                                c0 + c1 * x + c2 * squared(x) + c4 * squared(x) * squared(x));
    const auto r =
        ledger.let(name, star.resistivity / (2 * pi * row.arms * star.arm) * (log + sum));
    const Metres a = plain(star.radius);
    const bool on_top = plain(star.depth) < 4.0 * a;
    const bool fits = plain(x) <= 1 && plain(star.arm) >= 50.0 * a;
    return {r, on_top ? Trust::unsafe : fits ? Trust::within : Trust::outside};
}

template Estimate<Silent> wire_star(Silent&, const Name&, const tables::StarRow&,
                                    const WireStar<Silent>&);
template Estimate<Recording> wire_star(Recording&, const Name&, const tables::StarRow&,
                                       const WireStar<Recording>&);

}  // namespace toft::earth
