#include "study/path.h"

#include "cable/resistance.h"

namespace toft::study {

namespace {

using tables::FaultHeat;
using tables::Material;

/// Names of one conductor's lines at one state of heat.
struct ConductorNames {
    Name rise;
    Name r;
    Name z_r;
    Name z_x;
};

#define TOFT_NAMES(tag, what, state)                                                    \
    ConductorNames {                                                                    \
        {"rise." tag, "growth of resistance of the " what " " state},                   \
            {"r." tag, "resistance of the " what " per metre " state},                  \
            {"R." tag, "resistance of the " what " " state}, {                          \
            "X." tag, "reactance of the " what                                          \
        }                                                                               \
    }

ConductorNames live_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("line.cold", "line core", "at 20 °C");
    if (heat == Heat::working) return TOFT_NAMES("line.work", "line core", "at working temperature");
    return TOFT_NAMES("line.fault", "line core", "during a fault");
}

ConductorNames armour_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("arm.cold", "armour", "at 20 °C");
    if (heat == Heat::working) return TOFT_NAMES("arm.work", "armour", "at working temperature");
    return TOFT_NAMES("arm.fault", "armour", "during a fault");
}

ConductorNames separate_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("sep.cold", "separate conductor", "at 20 °C");
    if (heat == Heat::working) {
        return TOFT_NAMES("sep.work", "separate conductor", "at working temperature");
    }
    return TOFT_NAMES("sep.fault", "separate conductor", "during a fault");
}

#undef TOFT_NAMES

/// Temperature of a conductor in that state: 20 °C, its initial temperature for a fault, or the mean
/// of that and its final one.
template <class L>
ValueIn<L, Celsius> state_temperature(L& ledger, const FaultHeat& limits, Heat heat) {
    if (heat == Heat::cold) {
        return ledger.stated({"t20", "temperature of a test"}, reference_temperature, "by definition");
    }
    const auto initial =
        ledger.table({"t.initial", "temperature before a fault"}, limits.initial);
    if (heat == Heat::working) return initial;
    const auto final = ledger.table({"t.final", "highest temperature after a fault"}, limits.final);
    return ledger.let({"t.mean", "mean temperature during a fault"},
                      initial + (final - initial) * 0.5);
}

template <class L>
ValueIn<L, OhmsPerMetre> per_metre(L& ledger, const ConductorNames& names, const Material& material,
                                   const FaultHeat& limits, const Cited<OhmsPerMetre>& r20,
                                   Heat heat) {
    const auto cold = ledger.table({"r20", "resistance per metre at 20 °C"}, r20);
    if (heat == Heat::cold) return cold;
    const auto alpha = ledger.table({"alpha", "temperature coefficient at 20 °C"}, material.alpha20);
    const auto rise = cable::resistance_rise(ledger, names.rise, alpha,
                                             state_temperature(ledger, limits, heat));
    return cable::resistance_at(ledger, names.r, cold, rise);
}

template <class L>
class PathBuilder {
public:
    PathBuilder(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Heat heat)
        : ledger_(ledger), constants_(setting.catalogue->cable_constants), scheme_(scheme), heat_(heat) {}

    ImpedanceIn<L> copper(const ConductorNames& names, const FaultHeat& limits,
                          const Cited<OhmsPerMetre>& r20, const ValueIn<L, Metres>& length) {
        const auto r = per_metre(ledger_, names, constants_.copper, limits, r20, heat_);
        const auto x = ledger_.table({"x", "reactance of a core per metre"}, scheme_.cable->x);
        return {ledger_.let(names.z_r, r * length), ledger_.let(names.z_x, x * length)};
    }

    ImpedanceIn<L> armour(const ValueIn<L, Metres>& length) {
        const ConductorNames names = armour_names(heat_);
        const auto r = per_metre(ledger_, names, constants_.steel, constants_.armour,
                                 scheme_.cable->armour_r20, heat_);
        const auto x = ledger_.table({"x.arm", "reactance of armour per metre"}, constants_.armour_x);
        const auto whole_x = ledger_.let(names.z_x, x * length);
        // Cold is what a tester's direct current reads, and what bounds the largest fault.
        if (heat_ == Heat::cold) return {ledger_.let(names.z_r, r * length), whole_x};
        const auto ac = ledger_.table({"ac", "a.c. over d.c. resistance of armour"},
                                      constants_.armour_ac_factor);
        return {ledger_.let(names.z_r, r * ac * length), whole_x};
    }

    ImpedanceIn<L> beside(const ImpedanceIn<L>& a, const ImpedanceIn<L>& b) {
        return parallel(ledger_,
                        {{"Z2.path", "square of the impedances side by side"},
                         {"R.path", "resistance of the protective path"},
                         {"X.path", "reactance of the protective path"}},
                        a, b);
    }

private:
    L& ledger_;
    const tables::CableConstants& constants_;
    const RunScheme& scheme_;
    Heat heat_;
};

}  // namespace

template <class L>
FaultPath<L> fault_path(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Heat heat,
                        const ValueIn<L, Metres>& length) {
    const tables::CableConstants& c = setting.catalogue->cable_constants;
    PathBuilder<L> build(ledger, setting, scheme, heat);
    FaultPath<L> path;
    path.line = build.copper(live_names(heat), c.live, scheme.cable->r20, length);
    path.core = path.line;
    path.armour = build.armour(length);
    if (scheme.separate) {
        path.separate = build.copper(separate_names(heat), c.separate, scheme.separate->r20, length);
    }
    switch (scheme.protective) {
        case Protective::armour: path.serving = path.armour; break;
        case Protective::core: path.serving = path.core; break;
        case Protective::core_and_armour: path.serving = build.beside(path.core, path.armour); break;
        case Protective::separate: path.serving = path.separate; break;
        case Protective::armour_and_separate:
            path.serving = build.beside(path.separate, path.armour);
            break;
    }
    return path;
}

template FaultPath<Silent> fault_path(Silent&, const Setting<Silent>&, const RunScheme&, Heat,
                                      const Metres&);
template FaultPath<Recording> fault_path(Recording&, const Setting<Recording>&, const RunScheme&,
                                         Heat, const Traced<Metres>&);

}  // namespace toft::study
