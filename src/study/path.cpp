#include "study/path.h"

#include "cable/resistance.h"

namespace toft::study {

namespace {

using tables::FaultHeat;
using tables::Material;

/// Names of one conductor's lines at one state of heat.
struct ConductorNames {
    Name r20, alpha, initial, final, mean, rise, r, z_r, z_x;
};

#define TOFT_NAMES(tag, state, what, when)                                         \
    ConductorNames {                                                               \
        {"r20." tag, "resistance of the " what " per metre at 20 °C"},             \
            {"alpha." tag, "temperature coefficient of the " what " at 20 °C"},    \
            {"ti." tag, "temperature of the " what " before a fault"},             \
            {"tf." tag, "highest temperature of the " what " after a fault"},      \
            {"tm." tag, "mean temperature of the " what " during a fault"},        \
            {"rise." tag "." state, "growth of resistance of the " what " " when}, \
            {"r." tag "." state, "resistance of the " what " per metre " when},    \
            {"R." tag "." state, "resistance of the " what " " when}, {            \
            "X." tag "." state, "reactance of the " what                           \
        }                                                                          \
    }

ConductorNames live_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("line", "cold", "line core", "at 20 °C");
    if (heat == Heat::working)
        return TOFT_NAMES("line", "work", "line core", "at working temperature");
    return TOFT_NAMES("line", "fault", "line core", "during a fault");
}

ConductorNames armour_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("arm", "cold", "armour", "at 20 °C");
    if (heat == Heat::working) return TOFT_NAMES("arm", "work", "armour", "at working temperature");
    return TOFT_NAMES("arm", "fault", "armour", "during a fault");
}

ConductorNames separate_names(Heat heat) {
    if (heat == Heat::cold) return TOFT_NAMES("sep", "cold", "separate conductor", "at 20 °C");
    if (heat == Heat::working) {
        return TOFT_NAMES("sep", "work", "separate conductor", "at working temperature");
    }
    return TOFT_NAMES("sep", "fault", "separate conductor", "during a fault");
}

#undef TOFT_NAMES

ParallelNames path_names(Heat heat) {
    if (heat == Heat::cold) {
        return {{"Z2.path.cold", "square of the impedances side by side"},
                {"R.path.cold", "resistance of the protective path at 20 °C"},
                {"X.path.cold", "reactance of the protective path"}};
    }
    if (heat == Heat::working) {
        return {{"Z2.path.work", "square of the impedances side by side"},
                {"R.path.work", "resistance of the protective path at working temperature"},
                {"X.path.work", "reactance of the protective path"}};
    }
    return {{"Z2.path.fault", "square of the impedances side by side"},
            {"R.path.fault", "resistance of the protective path during a fault"},
            {"X.path.fault", "reactance of the protective path"}};
}

/// Temperature of a conductor in that state: its initial temperature for a fault, or the mean of
/// that and its final one.
template <class L>
ValueIn<L, Celsius> state_temperature(L& ledger, const ConductorNames& names,
                                      const FaultHeat& limits, Heat heat) {
    const auto initial = ledger.table(names.initial, limits.initial);
    if (heat == Heat::working) return initial;
    const auto final = ledger.table(names.final, limits.final);
    return ledger.let(names.mean, initial + (final - initial) * 0.5);
}

/// What a conductor is made of and how hot it may get.
struct Metal {
    const Material& material;
    const FaultHeat& limits;
    const Cited<OhmsPerMetre>& r20;
};

template <class L>
ValueIn<L, OhmsPerMetre> per_metre(L& ledger, const ConductorNames& names, const Metal& metal,
                                   Heat heat) {
    const auto cold = ledger.table(names.r20, metal.r20);
    if (heat == Heat::cold) return cold;
    const auto alpha = ledger.table(names.alpha, metal.material.alpha20);
    const auto rise = cable::resistance_rise(ledger, names.rise, alpha,
                                             state_temperature(ledger, names, metal.limits, heat));
    return cable::resistance_at(ledger, names.r, cold, rise);
}

template <class L>
class PathBuilder {
public:
    PathBuilder(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Heat heat)
        : ledger_(ledger),
          constants_(setting.catalogue->cable_constants),
          setting_make_(tables::make_of(*setting.catalogue, *scheme.cable)),
          scheme_(scheme),
          heat_(heat) {}

    ImpedanceIn<L> copper(const ConductorNames& names, const FaultHeat& limits,
                          const Cited<OhmsPerMetre>& r20, const ValueIn<L, Metres>& length) {
        const auto r = per_metre(ledger_, names, {constants_.copper, limits, r20}, heat_);
        const auto x = ledger_.table({"x", "reactance of a core per metre"}, scheme_.cable->x);
        return {ledger_.let(names.z_r, r * length), ledger_.let(names.z_x, x * length)};
    }

    ImpedanceIn<L> armour(const ValueIn<L, Metres>& length) {
        const ConductorNames names = armour_names(heat_);
        const auto r =
            per_metre(ledger_, names,
                      {constants_.steel, setting_make_.armour, scheme_.cable->armour_r20}, heat_);
        const auto x =
            ledger_.table({"x.arm", "reactance of armour per metre"}, constants_.armour_x);
        const auto whole_x = ledger_.let(names.z_x, x * length);
        // Cold is what a tester's direct current reads, and what bounds the largest fault.
        if (heat_ == Heat::cold) return {ledger_.let(names.z_r, r * length), whole_x};
        const auto ac = ledger_.table({"ac", "a.c. over d.c. resistance of armour"},
                                      constants_.armour_ac_factor);
        return {ledger_.let(names.z_r, r * ac * length), whole_x};
    }

    ImpedanceIn<L> beside(const ImpedanceIn<L>& a, const ImpedanceIn<L>& b) {
        return parallel(ledger_, path_names(heat_), a, b);
    }

private:
    L& ledger_;
    const tables::CableConstants& constants_;
    const tables::Make& setting_make_;
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
    path.line =
        build.copper(live_names(heat), tables::make_of(*setting.catalogue, *scheme.cable).live,
                     scheme.cable->r20, length);
    path.core = path.line;
    path.armour = build.armour(length);
    if (scheme.separate) {
        path.separate =
            build.copper(separate_names(heat), c.separate, scheme.separate->r20, length);
    }
    switch (scheme.protective) {
        case Protective::armour:
            path.serving = path.armour;
            break;
        case Protective::core:
            path.serving = path.core;
            break;
        case Protective::core_and_armour:
            path.serving = build.beside(path.core, path.armour);
            break;
        case Protective::separate:
            path.serving = path.separate;
            break;
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
