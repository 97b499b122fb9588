// The heat a fault may leave, against a fine step-by-step integration: resistances rise as the
// conductors warm, the current falls with them, and the device trips when the shares of its
// operating time at each current add up to one. Nothing the program says may be below that.

#include "device/curve.h"
#include "study/figures.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <complex>
#include <vector>

namespace toft::study {
namespace {

using support::Drawn;
using Complex = std::complex<double>;

/// A conductor that heats without losing any: its temperature follows from the energy it has had.
class Warming {
public:
    Warming(const tables::Material& metal, const tables::FaultHeat& limits, double r20_ohm_m,
            double section_mm2)
        : alpha_(metal.alpha20.value.number()),
          beta_(1 / alpha_ - 20),
          initial_(limits.initial.value.number()),
          final_(limits.final.value.number()),
          r20_(r20_ohm_m),
          withstood_(std::pow(limits.k.value.number() * section_mm2, 2)) {}

    double ohm_m() const { return r20_ * (1 + alpha_ * (temperature() - 20)); }
    void heat(double energy) { energy_ += energy; }
    double share() const { return energy_ / withstood_; }

private:
    /// Equal shares of the energy multiply the resistance alike.
    double temperature() const {
        const double ratio = (beta_ + final_) / (beta_ + initial_);
        return (beta_ + initial_) * std::pow(ratio, share()) - beta_;
    }

    double alpha_, beta_, initial_, final_, r20_, withstood_;
    double energy_ = 0;
};

/// One stretch up to its end, or a share of it, with what a fault flows through.
struct Length {
    Warming line;
    Warming back;
    double metres = 0;
    double line_x = 0, back_x = 0;  ///< ohms a metre
    double back_ac = 1;             ///< a.c. over d.c. resistance

    Complex line_z() const { return Complex(line.ohm_m(), line_x) * metres; }
    Complex back_z() const { return Complex(back.ohm_m() * back_ac, back_x) * metres; }
};

Length length_of(const Stretch& s, double metres, bool to_neutral) {
    const tables::Catalogue& all = support::catalogue();
    const tables::CableConstants& constants = all.cable_constants;
    const tables::Make& make = tables::make_of(all, *s.cable);
    const double x = s.cable->x.value.number();
    const Warming line(constants.material(make.metal), make.live, s.cable->r20.value.number(),
                       s.cable->section.number());
    if (to_neutral) return {line, line, metres, x, x, 1};
    switch (s.protective) {
        case Protective::armour:
            return {line,
                    Warming(constants.steel, make.armour, s.cable->armour_r20.value.number(),
                            s.cable->armour_area.value.number()),
                    metres,
                    x,
                    constants.armour_x.value.number(),
                    constants.armour_ac_factor.value};
        case Protective::core:
            return {line,
                    Warming(constants.material(make.metal), make.core,
                            s.cable->cpc_r20.value.number(), s.cable->cpc.number()),
                    metres,
                    x,
                    x,
                    1};
        default:
            return {line,
                    Warming(constants.copper, constants.separate, s.separate->r20.value.number(),
                            s.separate->section.number()),
                    metres,
                    x,
                    x,
                    1};
    }
}

/// Largest shares of what lines and paths withstand anywhere, once the device has operated.
struct Burnt {
    double live = 0;
    double path = 0;
    bool operates = true;
};
Burnt integrate(std::vector<Length> lengths, double source_ohm, double volts,
                const tables::Device& device) {
    Silent ledger;
    const Name unnamed{"x", ""};
    constexpr double step = 1e-3;  // of the way to operating
    for (double worn = 0; worn < 1; worn += step) {
        Complex z;
        for (const Length& l : lengths) z += l.line_z() + l.back_z();
        const Amperes i = amperes(volts / (source_ohm + std::abs(z)));
        // Within the curve this is the current's square times the operating time.
        const double energy = device::let_through(ledger, unnamed, device, i).number();
        if (!std::isfinite(energy)) return {9, 9, false};
        for (Length& l : lengths) {
            l.line.heat(energy * step);
            l.back.heat(energy * step);
            if (l.line.share() > 1.5 || l.back.share() > 1.5) return {9, 9, true};
        }
    }
    Burnt burnt;
    for (const Length& l : lengths) {
        burnt.live = std::fmax(burnt.live, l.line.share());
        burnt.path = std::fmax(burnt.path, l.back.share());
    }
    return burnt;
}

/// One conductor serves on every stretch, no RCD helps, and every cable lies alone.
Drawn plainly_protected() {
    Drawn drawn = *support::any_drawn();
    const auto one_way = [](support::DrawnStretch& s) {
        if (s.protective == Protective::core_and_armour) s.protective = Protective::core;
        if (s.protective == Protective::armour_and_separate) s.protective = Protective::armour;
        s.parallel = 1;
    };
    one_way(drawn);
    for (auto& s : drawn.further) one_way(s);
    drawn.earthing = BuildingEarthing::supply_earth;
    drawn.ze_ohm /= 2;
    drawn.zn_ohm /= 2;
    RC_PRE(!support::catalogue().devices[drawn.device].residual);
    return drawn;
}

/// Faults at a share of the last of some stretches, from the near end on.
std::vector<Length> up_to(const Setting<Silent>& setting, const RunScheme& scheme,
                          std::size_t stretch, double share, bool to_neutral) {
    std::vector<Length> lengths;
    for (std::size_t i = 0; i <= stretch; ++i) {
        const double whole = setting.stretches[i].length_most.number();
        lengths.push_back(
            length_of(scheme.stretch[i], i == stretch ? whole * share : whole, to_neutral));
    }
    return lengths;
}

RC_GTEST_PROP(HeatingLaws, NoFaultHeatsMoreThanTheProgramSays, ()) {
    const Drawn drawn = plainly_protected();
    const site::Job job = support::job_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    RC_PRE(figures.heat <= 1.0);  // what fails is not relied on
    const double volts = (setting.supply.c_min * setting.supply.u0).number();
    for (std::size_t i = 0; i < scheme.stretches; ++i) {
        for (double share : {1.0, support::number_between(0.05, 1)}) {
            const Burnt earth = integrate(up_to(setting, scheme, i, share, false),
                                          setting.supply.ze_most.number(), volts, *scheme.device);
            RC_ASSERT(earth.operates);
            RC_ASSERT(earth.live <= figures.heat_live * (1 + 1e-6));
            RC_ASSERT(earth.path <= figures.heat_path * (1 + 1e-6));
            const Burnt neutral = integrate(up_to(setting, scheme, i, share, true),
                                            setting.supply.zn_most.number(), volts, *scheme.device);
            RC_ASSERT(neutral.operates);
            RC_ASSERT(neutral.live <= figures.heat_live * (1 + 1e-6));
        }
    }
}

/// The figure is of some use: over many runs that survive it is not far above what is integrated.
TEST(HeatingLaws, TheProgramIsNotBlindlyCautious) {
    site::Job job = support::plain_job();
    job.intake.ze = support::measured(ohms(0.2));
    const auto scheme = support::scheme(support::cable(3, 10), Protective::core, support::fuse(63));
    const auto setting = support::prepared(job);
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, setting, scheme, Stage::heat, figures);
    const double volts = (setting.supply.c_min * setting.supply.u0).number();
    const Burnt neutral = integrate(up_to(setting, scheme, 0, 1, true), 0.2, volts, *scheme.device);
    EXPECT_GT(neutral.live, 0.2 * figures.heat_live);
    EXPECT_LE(neutral.live, figures.heat_live);
}

}  // namespace
}  // namespace toft::study
