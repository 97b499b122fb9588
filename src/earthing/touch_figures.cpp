#include "earthing/touch_figures.h"

#include "network/touch_voltage.h"
#include "study/path.h"

#include <cmath>

namespace toft::study {

namespace {

/// The protective path of the whole run, cold and at its shortest, as the largest fault finds it.
template <class L>
ImpedanceIn<L> protective_path(L& ledger, const Setting<L>& s, const RunScheme& scheme) {
    ImpedanceIn<L> sum;
    for (std::size_t i = 0; i < scheme.stretches; ++i) {
        const int part = scheme.stretches == 1 ? 0 : static_cast<int>(i) + 1;
        const auto path =
            fault_path(ledger, s, scheme.stretch[i],
                       PathAt<L>{Heat::cold, s.stretches[i].length_least, part, true});
        sum = i == 0 ? path.serving : sum + path.serving;
    }
    return sum;
}

/// The supply's own return, where it is the neutral: all of its drop, for a house that nothing
/// holds to the ground. An electrode cannot rise further than the source drives it, though its
/// greatest resistance and the greatest fault current are looked for apart.
template <class L>
ValueIn<L, Volts> rise_of_house(L& ledger, const Setting<L>& s, const Figures<L>& f) {
    const Name name{"Ut.house", "rise of the house's earthing terminal during the fault"};
    const auto line = ledger.table({"share.line", "a line's part of the external loop"},
                                   s.catalogue->limits.line_share);
    if (s.supply.system == site::Earthing::tt) {
        return ledger.let(name, least(f.le_far * s.supply.ra_most, s.supply.c_max * s.supply.u0));
    }
    return ledger.let(name, f.le_far * (s.supply.ze_least * (1.0 - line)));
}

/// By the overcurrent device or a residual current device at the head, whichever is quicker.
template <class L>
ValueIn<L, Seconds> cleared(L& ledger, const RunScheme& scheme, const Figures<L>& f) {
    const Name name{"t.touch", "time the fault may last"};
    const auto residual = residual_at_head(scheme);
    if (!residual) return ledger.let(name, f.disconnection * 1.0);
    const auto quick =
        ledger.table({"t.rcd", "longest time of the residual current device"}, residual->longest);
    return ledger.let(name, least(f.disconnection, quick));
}

template <class L>
void carried(L& ledger, const Setting<L>& s, const RunScheme& scheme, const Figures<L>& f,
             TouchFigures<L>& out) {
    out.outbuilding = network::carried_touch(
        ledger, {"Ut", "touch voltage at the outbuilding, against metal on the house's earth"},
        f.le_far, protective_path(ledger, s, scheme));
    out.house = rise_of_house(ledger, s, f);
    out.lasts = cleared(ledger, scheme, f);
}

/// Within the building, on its own rod: nearly the whole voltage stands on the rod until the
/// residual current device of the circuit opens.
template <class L>
void own(L& ledger, const Setting<L>& s, TouchFigures<L>& out) {
    const auto fault = ledger.let({"If.own", "fault to the building's own electrode"},
                                  s.supply.u0 / (s.building.ra_most + s.supply.ze_least));
    out.own_electrode = true;
    out.outbuilding = network::own_electrode_touch(
        ledger, {"Ut", "touch voltage at the outbuilding, against the ground"}, fault,
        s.building.ra_most);
    out.house = ledger.let({"Ut.house", "rise of the house's earthing terminal"},
                           fault * s.supply.ze_least);
    const auto idn = ledger.table({"IdN.board", "residual current rating at the building"},
                                  s.catalogue->limits.residual_socket);
    const tables::RcdTimes& times = s.catalogue->rcd_general;
    // Small ratings are tested at 0.25 A in place of five times theirs: twice five covers it.
    const bool strong = plain(fault) >= 10.0 * plain(idn);
    const auto quick = ledger.table({"t.rcd", "longest time of the residual current device"},
                                    strong ? times.longest_5 : times.longest_1);
    const Name lasts{"t.touch", "time the fault may last"};
    out.lasts = plain(fault) >= plain(idn)
                    ? ledger.let(lasts, quick * 1.0)
                    : ledger.stated(lasts, seconds(INFINITY), "nothing clears it");
}

}  // namespace

template <class L>
TouchFigures<L> touch_figures(L& ledger, const Setting<L>& s, const RunScheme& scheme,
                              const Figures<L>& f) {
    TouchFigures<L> out;
    if (scheme.earthing == BuildingEarthing::own_electrode) {
        own(ledger, s, out);
    } else {
        carried(ledger, s, scheme, f, out);
    }
    const tables::Shock& shock = s.catalogue->shock;
    out.dry = shock::longest_touch(ledger, {"t.dry", "longest touch, dry"}, shock,
                                   tables::TouchCurve::dry, out.outbuilding);
    out.wet = shock::longest_touch(ledger, {"t.wet", "longest touch, wet"}, shock,
                                   tables::TouchCurve::wet, out.outbuilding);
    return out;
}

template TouchFigures<Silent> touch_figures(Silent&, const Setting<Silent>&, const RunScheme&,
                                            const Figures<Silent>&);
template TouchFigures<Recording> touch_figures(Recording&, const Setting<Recording>&,
                                               const RunScheme&, const Figures<Recording>&);

}  // namespace toft::study
