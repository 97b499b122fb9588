#pragma once
// Energy that a run loses as heat in its conductors, in a year, and what that is worth over the
// years that the price book counts. Page: docs/methods/energy-lost.md.

#include "price/book.h"
#include "study/figures.h"

namespace toft::loss {

/// What the buildings that a run feeds draw over a year.
template <class L>
struct Year {
    ValueIn<L, double> used_kwh{};
    ValueIn<L, double> full_kw{};        ///< at the run's design current
    ValueIn<L, double> load_factor{};    ///< mean power over that, 0 to 1
    ValueIn<L, VoltAmperes> thousand{};  ///< a kilovolt-ampere, to reckon in kilowatts
    ValueIn<L, double> hours{};          ///< at the design current, in which as much would be lost
};

/// As stated for each building, else from its demand and what its use usually asks for; the same
/// for every way to build the run.
template <class L>
Year<L> year_of(L& ledger, const study::Setting<L>& setting);

template <class L>
struct Lost {
    ValueIn<L, double> full_kw{};   ///< at the design current, all lines loaded as the heaviest
    ValueIn<L, double> kwh_year{};  ///< in a year
};

/// `figures` must be done up to the drop. Conductors are as warm all year as at the design current,
/// so it is what may be lost at most for such a load.
template <class L>
Lost<L> lost_by(L& ledger, const study::Setting<L>& setting, const study::Figures<L>& figures,
                const Year<L>& year);

/// What a pound at the end of each of so many years is worth today at that interest (per cent, 0 or
/// more): 1/(1+i) + 1/(1+i)^2 + … Source: IEC 60287-3-2, 3; any table of annuities.
double worth_today(double years, double interest_percent);

/// Of that energy lost each year, over all years counted.
template <class L>
ValueIn<L, Pounds> cost_over_years(L& ledger, const price::Book& book,
                                   const ValueIn<L, double>& kwh_year);

/// The three in one, without working.
struct OverYears {
    double kwh_year = 0;
    double pounds = 0;  ///< over all years counted, at today's worth
};
OverYears over_years(const price::Book& book, const study::Setting<Silent>& setting,
                     const study::Figures<Silent>& figures, const Year<Silent>& year);

}  // namespace toft::loss
