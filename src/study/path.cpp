#include "study/path.h"

#include "cable/resistance.h"

namespace toft::study {

namespace {

using tables::FaultHeat;
using tables::Material;

/// Names of one conductor's lines at one state of heat.
struct ConductorNames {
    Name r20, alpha, initial, final, during, rise, r, z_r, z_x;

    ConductorNames numbered(int part) const {
        ConductorNames names = *this;
        for (Name* name : {&names.r20, &names.alpha, &names.initial, &names.final, &names.during,
                           &names.rise, &names.r, &names.z_r, &names.z_x}) {
            name->part = part;
        }
        return names;
    }
};

constexpr ConductorNames no_names{};

#define TOFT_NAMES(tag, state, what, when)                                         \
    ConductorNames {                                                               \
        {"r20." tag, "resistance of the " what " per metre at 20 °C"},             \
            {"alpha." tag, "temperature coefficient of the " what " at 20 °C"},    \
            {"ti." tag, "temperature of the " what " before a fault"},             \
            {"tf." tag, "highest temperature of the " what " after a fault"},      \
            {"tm." tag "." state, "temperature of the " what " " when},            \
            {"rise." tag "." state, "growth of resistance of the " what " " when}, \
            {"r." tag "." state, "resistance of the " what " per metre " when},    \
            {"R." tag "." state, "resistance of the " what " " when}, {            \
            "X." tag "." state, "reactance of the " what                           \
        }                                                                          \
    }
#define TOFT_STATES(tag, what)                                                           \
    switch (heat) {                                                                      \
        case Heat::cold:                                                                 \
            return TOFT_NAMES(tag, "cold", what, "at 20 °C");                            \
        case Heat::working:                                                              \
            return TOFT_NAMES(tag, "work", what, "at working temperature");              \
        case Heat::early:                                                                \
            return TOFT_NAMES(tag, "early", what, "while a fault has hardly warmed it"); \
        case Heat::fault:                                                                \
            break;                                                                       \
    }                                                                                    \
    return TOFT_NAMES(tag, "fault", what, "during a fault")

ConductorNames live_names(Heat heat) { TOFT_STATES("line", "line core"); }
ConductorNames core_names(Heat heat) { TOFT_STATES("core", "protective core"); }
ConductorNames armour_names(Heat heat) { TOFT_STATES("arm", "armour"); }
ConductorNames separate_names(Heat heat) { TOFT_STATES("sep", "separate conductor"); }

#undef TOFT_STATES
#undef TOFT_NAMES

ParallelNames path_names(Heat heat, int part) {
    const auto names = [part](const char* square, const char* r, const char* x) {
        return ParallelNames{{square, "square of the impedances side by side", part},
                             {r, "resistance of the protective path", part},
                             {x, "reactance of the protective path", part}};
    };
    switch (heat) {
        case Heat::cold:
            return names("Z2.path.cold", "R.path.cold", "X.path.cold");
        case Heat::working:
            return names("Z2.path.work", "R.path.work", "X.path.work");
        case Heat::early:
            return names("Z2.path.early", "R.path.early", "X.path.early");
        case Heat::fault:
            break;
    }
    return names("Z2.path.fault", "R.path.fault", "X.path.fault");
}

/// How far from its temperature before a fault towards the highest after it.
double share_of_heating(Heat heat) {
    return heat == Heat::early ? early_share : heat == Heat::fault ? 1.0 : 0.0;
}

template <class L>
ValueIn<L, Celsius> state_temperature(L& ledger, const ConductorNames& names,
                                      const FaultHeat& limits, Heat heat) {
    const auto initial = ledger.table(names.initial, limits.initial);
    if (heat == Heat::working) return initial;
    const auto final = ledger.table(names.final, limits.final);
    return ledger.let(names.during, initial + (final - initial) * share_of_heating(heat));
}

/// A metal conductor of the stretch.
struct Conducting {
    const Material& metal;
    const FaultHeat& limits;
    const Cited<OhmsPerMetre>& r20;
};

template <class L>
class PathBuilder {
public:
    PathBuilder(L& ledger, const Setting<L>& setting, const Stretch& stretch, const PathAt<L>& at)
        : ledger_(ledger),
          constants_(setting.catalogue->cable_constants),
          make_(tables::make_of(*setting.catalogue, *stretch.cable)),
          stretch_(stretch),
          at_(at) {}

    ImpedanceIn<L> line() {
        return conductor(named<live_names>(),
                         {constants_.material(make_.metal), make_.live, stretch_.cable->r20});
    }
    ImpedanceIn<L> core() {
        return conductor(named<core_names>(),
                         {constants_.material(make_.metal), make_.core, stretch_.cable->cpc_r20});
    }
    ImpedanceIn<L> separate() {
        return conductor(named<separate_names>(),
                         {constants_.copper, constants_.separate, stretch_.separate->r20});
    }

    ImpedanceIn<L> armour() {
        const ConductorNames& names = named<armour_names>();
        const auto r = per_metre(
            names, {constants_.steel, make_.armour, stretch_.cable->armour_r20}, at_.heat);
        const auto x = ledger_.table({"x.arm", "reactance of armour per metre", at_.part},
                                     constants_.armour_x);
        const auto whole_x = ledger_.let(names.z_x, shared(x * at_.length));
        // Cold is what a tester's direct current reads, and what bounds the largest fault.
        if (at_.heat == Heat::cold)
            return {ledger_.let(names.z_r, shared(r * at_.length)), whole_x};
        const auto ac = ledger_.table({"ac", "a.c. over d.c. resistance of armour", at_.part},
                                      constants_.armour_ac_factor);
        return {ledger_.let(names.z_r, shared(r * ac * at_.length)), whole_x};
    }

    /// With the part of a reading that its length does not give.
    ImpedanceIn<L> with(const Name& name, const ImpedanceIn<L>& z, const ValueIn<L, Ohms>& more) {
        return {ledger_.let(name, z.r + shared(more)), z.x};
    }

    ImpedanceIn<L> beside(const ImpedanceIn<L>& a, const ImpedanceIn<L>& b) {
        return parallel(ledger_, path_names(at_.heat, at_.part), a, b);
    }

private:
    /// Nobody reads them where nothing is written down.
    template <ConductorNames (*names)(Heat)>
    const ConductorNames& named() {
        if constexpr (L::records) {
            names_ = names(at_.heat).numbered(at_.part);
            return names_;
        } else {
            return no_names;
        }
    }

    ValueIn<L, OhmsPerMetre> per_metre(const ConductorNames& names, const Conducting& c,
                                       Heat heat) {
        const auto r20 = ledger_.table(names.r20, c.r20);
        if (heat == Heat::cold) return r20;
        const auto t = state_temperature(ledger_, names, c.limits, heat);
        const auto alpha = ledger_.table(names.alpha, c.metal.alpha20);
        const auto rise = cable::resistance_rise(ledger_, names.rise, alpha, t);
        return cable::resistance_at(ledger_, names.r, r20, rise);
    }

    ImpedanceIn<L> conductor(const ConductorNames& names, const Conducting& c) {
        const auto r = per_metre(names, c, at_.heat);
        const auto x =
            ledger_.table({"x", "reactance of a core per metre", at_.part}, stretch_.cable->x);
        return {ledger_.let(names.z_r, shared(r * at_.length)),
                ledger_.let(names.z_x, shared(x * at_.length))};
    }

    /// Of equal cables side by side each takes its share.
    template <class Z>
    Z shared(const Z& z) const {
        return stretch_.parallel > 1 ? z / static_cast<double>(stretch_.parallel) : z;
    }

    L& ledger_;
    const tables::CableConstants& constants_;
    const tables::Make& make_;
    const Stretch& stretch_;
    PathAt<L> at_;
    struct Unnamed {};
    std::conditional_t<L::records, ConductorNames, Unnamed> names_{};  ///< of the conductor in hand
};

/// What a reading finds beyond the length is taken as in series with whatever serves.
template <class L>
void add_readings(PathBuilder<L>& build, const ExistingSetting<L>& there, const Stretch& stretch,
                  int part, FaultPath<L>& path) {
    path.line = build.with({"R.line.read", "resistance of the line core with what was read", part},
                           path.line, there.more_line);
    if (stretch.armoured()) {
        path.armour =
            build.with({"R.arm.with", "resistance of the armour with what was read", part},
                       path.armour, there.more_path);
    }
    path.serving =
        build.with({"R.path.read", "resistance of the protective path with what was read", part},
                   path.serving, there.more_path);
}

}  // namespace

template <class L>
FaultPath<L> fault_path(L& ledger, const Setting<L>& setting, const Stretch& stretch,
                        const PathAt<L>& at) {
    PathBuilder<L> build(ledger, setting, stretch, at);
    FaultPath<L> path;
    path.line = build.line();
    if (core_serves(stretch.protective)) path.core = build.core();
    if (stretch.armoured()) path.armour = build.armour();
    if (stretch.separate) path.separate = build.separate();
    switch (stretch.protective) {
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
    if (at.as_read && stretch.old()) add_readings(build, setting.existing, stretch, at.part, path);
    return path;
}

template FaultPath<Silent> fault_path(Silent&, const Setting<Silent>&, const Stretch&,
                                      const PathAt<Silent>&);
template FaultPath<Recording> fault_path(Recording&, const Setting<Recording>&, const Stretch&,
                                         const PathAt<Recording>&);

}  // namespace toft::study
