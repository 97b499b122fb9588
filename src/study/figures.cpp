#include "study/figures.h"

#include "cable/drop.h"
#include "device/curve.h"
#include "network/drop.h"
#include "study/circuit_figures.h"
#include "study/fault_figures.h"
#include "study/heat_figures.h"

namespace toft::study {

namespace {

const tables::Make& make_of(const tables::Catalogue& catalogue, const Stretch& stretch) {
    return tables::make_of(catalogue, *stretch.cable);
}

template <class L>
void work_out_rating(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    for (std::size_t i = 0; i < s.legs.size(); ++i) {
        const int leg = static_cast<int>(i) + 1;
        const Stretch& laid = scheme.stretch[s.legs[i].stretch];
        auto iz =
            cable::leg_rating(ledger, laid.cable->duty(s.phases), factors_of(s.legs[i], laid), leg);
        if (laid.parallel > 1) {
            iz = ledger.let({"Iz.both", "rating of the cables side by side", leg, "", "523.7"},
                            iz * static_cast<double>(laid.parallel));
        }
        if (i == 0 || plain(iz) < plain(f.iz)) f.governing_leg = leg;
        f.iz = i == 0 ? iz : least(f.iz, iz);
    }
    if (s.harmonics) {
        f.iz = ledger.let({"Iz.even", "rating on the worst leg, lines without harmonics"}, f.iz) *
               s.harmonic_factor;
    }
    f.iz = ledger.let({"Iz", "rating of the cable on its worst leg", 0, "", "433.1.1"}, f.iz);
}

/// What the current of the run meets on one leg; nothing to go by where no rating is tabulated.
template <class L>
ImpedanceIn<L> met_on(L& ledger, const Setting<L>& s, const Stretch& laid, std::size_t i) {
    const LegSetting<L>& leg = s.legs[i];
    const cable::LegFactors<L>& factors = factors_of(leg, laid);
    const tables::Duty& duty = laid.cable->duty(s.phases);
    const int number = static_cast<int>(i) + 1;
    const double share = 1.0 / laid.parallel;
    const auto ib = laid.parallel == 1
                        ? s.ib
                        : ledger.let({"Ib.each", "current of each cable", number}, s.ib * share);
    const auto heats =
        s.harmonics
            ? ledger.let({"I.heats", "current that would heat as much without harmonics", number},
                         ib / s.harmonic_factor)
            : ib;
    auto loop =
        cable::leg_drop(
            ledger, cable::DropInput<L>{s.catalogue->cable_constants, make_of(*s.catalogue, laid),
                                        duty, factors, s.phases, heats, s.neutral_share,
                                        leg.surroundings, leg.length, number})
            .loop;
    if (laid.parallel == 1) return loop;
    return {loop.r * share, loop.x * share};
}

/// Voltage the worst of three unlike lines loses, with the neutral's current turned either way: the
/// circuits may be joined to the lines in either order.
template <class L>
ValueIn<L, Volts> unlike_lines_drop(L& ledger, const Setting<L>& s, const ImpedanceIn<L>& run) {
    const auto once = ledger.let({"n.both", "line and neutral together"}, 1.0 + s.neutral_share);
    const auto r = ledger.let({"R.core", "resistance of one core, all legs"}, run.r / once);
    const auto x = ledger.let({"X.core", "reactance of one core, all legs"}, run.x / once);
    const auto sine = ledger.let({"sin.load", "reactive share of the load"},
                                 root(most(1.0 - squared(s.power_factor), 0.0)));
    const bool ahead = plain(x) * plain(s.power_factor) <= plain(r) * plain(sine);
    ValueIn<L, Volts> worst{};
    bool any = false;
    for (std::size_t k = 0; k < s.lines.size(); ++k) {
        const LineShare<L>& line = s.lines[k];
        if (!line.loaded) continue;
        const int number = static_cast<int>(k) + 1;
        const auto size = ledger.let({"n.size", "line and neutral over the line", number},
                                     root(squared(line.along) + squared(line.across)));
        if (!(plain(size) > 0)) continue;
        const auto in_step = line.along * s.power_factor;
        const auto turned = line.across * sine;
        const auto factor = ledger.let({"cos.line", "cosine of what the line feels", number},
                                       (ahead ? in_step + turned : in_step - turned) / size);
        const double sign = plain(line.along) * plain(sine) -
                            (ahead ? 1 : -1) * plain(line.across) * plain(s.power_factor);
        const auto felt_x = ledger.let({"X.line", "reactance as the line feels it", number},
                                       sign < 0 ? x - x * 2.0 : x * 1.0);
        const auto i = ledger.let({"I.felt", "current of line and neutral", number}, s.ib * size);
        const auto lost = ledger.let(
            {"dU.line", "voltage the line loses", number},
            network::line_drop(ledger, s.supply.u0, network::Loading<L>{i, factor, number},
                               ImpedanceIn<L>{r, felt_x}) *
                1.0);
        worst = any ? most(worst, lost) : lost;
        any = true;
    }
    return ledger.let({"dU.worst", "voltage drop of the worst line"}, worst);
}

template <class L>
bool unlike_lines(const Setting<L>& s) {
    return s.phases == 3 && (s.lines[0].loaded || s.lines[1].loaded || s.lines[2].loaded);
}

template <class L>
void work_out_drop(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    ImpedanceIn<L> run;
    for (std::size_t i = 0; i < s.legs.size(); ++i) {
        const auto part = met_on(ledger, s, scheme.stretch[s.legs[i].stretch], i);
        run = i == 0 ? part : run + part;
    }
    if (scheme.first().old()) {
        run.r = run.r + s.existing.more_line * ((1.0 + s.neutral_share) /
                                                static_cast<double>(scheme.first().parallel));
    }
    run.r = ledger.let({"R.run", "resistance met on all legs, line and neutral"}, run.r);
    run.x = ledger.let({"X.run", "reactance met on all legs, line and neutral"}, run.x);
    f.met = run;
    f.drop = unlike_lines(s)
                 ? unlike_lines_drop(ledger, s, run)
                 : network::line_drop(ledger, s.supply.u0,
                                      network::Loading<L>{s.ib, s.power_factor, 0}, run);
    f.drop_percent = ledger.let({"drop", "voltage drop of the run", 0, "%", "525"},
                                100.0 * f.drop / s.supply.u0);
    f.drop_path = s.house.at_house
                      ? f.drop_percent
                      : ledger.let({"drop.path", "voltage drop of the run and those before it", 0,
                                    "%", "525"},
                                   s.drop_before + f.drop_percent);
}

}  // namespace

template <class L>
void work_out(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Stage stage,
              Figures<L>& figures) {
    if (figures.done < Stage::rating && stage >= Stage::rating) {
        work_out_rating(ledger, setting, scheme, figures);
        figures.done = Stage::rating;
        figures.circuits_done = false;
    }
    if (figures.done < Stage::drop && stage >= Stage::drop) {
        work_out_drop(ledger, setting, scheme, figures);
        figures.done = Stage::drop;
    }
    if (figures.done < Stage::current && stage >= Stage::current) {
        work_out_currents(ledger, setting, scheme, figures);
        figures.done = Stage::current;
    }
    if (stage == Stage::circuits && !figures.circuits_done) {
        work_out_circuits(ledger, setting, scheme, figures);
        figures.circuits_done = true;
    }
    if (figures.done < Stage::heat && stage == Stage::heat) {
        work_out_heat(ledger, setting, scheme, figures);
        figures.done = Stage::heat;
    }
}

template <class L>
ValueIn<L, Ohms> largest_loop_for(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                                  Seconds time) {
    const auto ia = device::operating_current(
        ledger, {"Ia", "current that operates the device in time", 0, "", "Appendix 3"},
        *scheme.device, time);
    return ledger.let({"Zs.max", "largest loop that still operates the device", 0, "", "411.4.4"},
                      setting.supply.c_min * setting.supply.u0 / ia);
}

template void work_out(Silent&, const Setting<Silent>&, const RunScheme&, Stage, Figures<Silent>&);
template void work_out(Recording&, const Setting<Recording>&, const RunScheme&, Stage,
                       Figures<Recording>&);
template Ohms largest_loop_for(Silent&, const Setting<Silent>&, const RunScheme&, Seconds);
template Traced<Ohms> largest_loop_for(Recording&, const Setting<Recording>&, const RunScheme&,
                                       Seconds);

}  // namespace toft::study
