#include "loss/energy.h"

#include "demand/scenario.h"

#include <cmath>

namespace toft::loss {

namespace {

constexpr double hours_of_year = 8760;

/// What one building uses in a year, kilowatt-hours; of the run's own building `of` is empty.
template <class L>
ValueIn<L, double> used_by(L& ledger, const study::Setting<L>& s,
                           const ValueIn<L, VoltAmperes>& thousand, const site::Building& b,
                           const char* of) {
    const Name used{"E.used", "energy used in a year", 0, "kWh", "", of};
    if (b.energy_kwh_year.known) return ledger.stated(used, b.energy_kwh_year.high, "survey");
    Silent silent;
    const demand::Place<Silent> place{&s.catalogue->demand, plain(s.supply.u0), s.phases, of};
    const auto load = demand::building_demand(silent, place, b, study::wanted_scenario(*s.job));
    Amperes sum = amperes(0);
    for (int k = 0; k < s.phases; ++k) {
        sum = sum + load.lines.each[static_cast<std::size_t>(k)] + load.later;
    }
    const auto amps = ledger.stated({"I.sum", "demand of all its lines", 0, "", "", of}, sum,
                                    "demand of the building");
    const auto kw = ledger.let({"P.sum", "its demand", 0, "kW", "", of},
                               s.supply.u0 * amps * s.power_factor / thousand);
    const auto hours = ledger.table(
        {"h.use", "hours of full demand a year", 0, "h", "", of},
        tables::yearly_hours(s.catalogue->demand, b.use ? site::word(*b.use) : "").hours);
    return ledger.let(used, kw * hours);
}

}  // namespace

template <class L>
Year<L> year_of(L& ledger, const study::Setting<L>& s) {
    Year<L> year;
    const auto& thousand = year.thousand =
        ledger.stated({"kVA", "a thousand volts times amperes"}, VoltAmperes(1000), "unit");
    auto used = used_by(ledger, s, thousand, *s.building_facts, "");
    for (const site::Building* b : study::fed_through(*s.job, *s.building_facts)) {
        used = used + used_by(ledger, s, thousand, *b, b->id.c_str());
    }
    year.used_kwh =
        ledger.let({"E.year", "energy through the run in a year", 0, "kWh"}, used * 1.0);
    year.full_kw =
        ledger.let({"P.full", "power at the design current", 0, "kW"},
                   s.supply.u0 * s.ib * static_cast<double>(s.phases) * s.power_factor / thousand);
    const Name factor{"LF", "load factor"};
    year.load_factor =
        plain(year.full_kw) > 0
            ? ledger.let(factor, least(year.used_kwh / (hours_of_year * year.full_kw), 1.0))
            : ledger.stated(factor, 0.0, "nothing is drawn");
    const auto share = ledger.table({"a.loss", "share of the load factor in the loss factor"},
                                    s.catalogue->limits.loss_share);
    year.hours = ledger.let(
        {"h.loss", "hours at the design current that lose as much", 0, "h"},
        hours_of_year * (share * year.load_factor + (1.0 - share) * squared(year.load_factor)));
    return year;
}

template <class L>
Lost<L> lost_by(L& ledger, const study::Setting<L>& s, const study::Figures<L>& f,
                const Year<L>& year) {
    const auto one = ledger.let({"R.one", "resistance of one core, all legs"},
                                f.met.r / (1.0 + s.neutral_share));
    Lost<L> lost;
    lost.full_kw =
        ledger.let({"P.lost", "lost as heat at the design current", 0, "kW"},
                   squared(s.ib) * one *
                       (static_cast<double>(s.phases) + squared(s.neutral_share)) / year.thousand);
    lost.kwh_year = ledger.let({"E.lost", "lost in a year", 0, "kWh"}, lost.full_kw * year.hours);
    return lost;
}

double worth_today(double years, double interest_percent) {
    const double i = interest_percent / 100;
    if (i < 1e-9) return years;
    return (1 - std::pow(1 + i, -years)) / i;
}

template <class L>
ValueIn<L, Pounds> cost_over_years(L& ledger, const price::Book& book,
                                   const ValueIn<L, double>& kwh_year) {
    using price::Item;
    const auto each = ledger.stated({"p.kWh", "price of a kilowatt-hour"},
                                    pounds(book.amount(Item::energy_kwh)), book.name.c_str());
    const auto worth = ledger.stated(
        {"n.years", "years counted, at today's worth"},
        worth_today(book.amount(Item::years_counted), book.amount(Item::interest_percent)),
        book.name.c_str());
    return ledger.let({"P.years", "energy lost over the years", 0, "", "IEC 60287-3-2"},
                      each * kwh_year * worth);
}

OverYears over_years(const price::Book& book, const study::Setting<Silent>& setting,
                     const study::Figures<Silent>& figures, const Year<Silent>& year) {
    Silent silent;
    const double kwh = lost_by(silent, setting, figures, year).kwh_year;
    return {kwh, cost_over_years(silent, book, kwh).number()};
}

template Year<Silent> year_of(Silent&, const study::Setting<Silent>&);
template Year<Recording> year_of(Recording&, const study::Setting<Recording>&);
template Lost<Silent> lost_by(Silent&, const study::Setting<Silent>&, const study::Figures<Silent>&,
                              const Year<Silent>&);
template Lost<Recording> lost_by(Recording&, const study::Setting<Recording>&,
                                 const study::Figures<Recording>&, const Year<Recording>&);
template Pounds cost_over_years(Silent&, const price::Book&, const double&);
template Traced<Pounds> cost_over_years(Recording&, const price::Book&, const Traced<double>&);

}  // namespace toft::loss
