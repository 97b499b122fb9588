#pragma once
// What an electrode's own current does to the ground around it.
//
//   lasting  theta = V²/(2 lambda rho)      final rise of temperature at the metal; size and shape
//            V     = √(2 lambda rho theta)  do not enter (Ollendorff; MIL-HDBK-419A, 2.8.2)
//   short    J = K/√(rho t)                 current density, K from BS 7430 (7.60e3, about 33 K;
//                                           IS 3043 7.57e3, IEEE 142 amounts to 11.08e3)
//
// Ground of low resistivity dries at a lower voltage. Where the lasting law gives more than the
// tabulated rise, water leaves, resistivity climbs and the law ends: `dries`. The short law leaves
// out heat that flows away, which is small for seconds only: `too_long` beyond.
// Page: docs/methods/electrode-heat.md.

#include "base/ledger.h"
#include "tables/shock.h"

namespace toft::shock {

/// Ground around an electrode.
template <class L>
struct WarmGround {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, tables::SoilConductivity> conductivity{};
};

enum class Heating {
    holds,  ///< the law applies
    dries   ///< the ground dries out: the figure is only a sign, resistance will climb
};

template <class L>
struct SteadyRise {
    ValueIn<L, Kelvins> rise{};
    Heating heating = Heating::dries;
};

/// Final rise at the metal of an electrode held at `v` against true ground for hours.
template <class L>
SteadyRise<L> steady_rise(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                          const WarmGround<L>& ground, const ValueIn<L, Volts>& v);

/// The voltage at which the ground reaches the tabulated rise and begins to dry.
template <class L>
ValueIn<L, Volts> drying_voltage(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                                 const WarmGround<L>& ground);

enum class ShortTime {
    holds,
    too_long  ///< longer than the short law is used for: take the lasting law
};

template <class L>
struct ShortCurrent {
    ValueIn<L, tables::AmperesPerSquareMetre> density{};
    ValueIn<L, Amperes> current{};
    ShortTime law = ShortTime::too_long;
};

template <class L>
struct HotRod {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};  ///< in the ground
    ValueIn<L, Metres> diameter{};
};

/// The current a rod may carry for `time` (above 0), its end not counted.
template <class L>
ShortCurrent<L> short_current(L& ledger, const Name& name, const tables::ElectrodeHeat& heat,
                              const HotRod<L>& rod, const ValueIn<L, Seconds>& time);

}  // namespace toft::shock
