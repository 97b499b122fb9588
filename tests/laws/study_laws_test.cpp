// What must hold of any run whatever its figures: the order of things that every electrician knows.

#include "base/limit.h"
#include "cable/fault_heat.h"
#include "device/curve.h"
#include "study/figures.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::Drawn;

Figures<Silent> figures_of(const Drawn& drawn) {
    const site::Job job = support::job_of(drawn);
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, support::prepared(job), support::scheme_of(drawn), Stage::heat, figures);
    return figures;
}

/// a <= b, ties allowed for.
template <class Q>
bool no_more(Q a, Q b) {
    return within(number_of(a), number_of(b));
}

std::size_t any_leg(const Drawn& drawn) {
    return *rc::gen::inRange<std::size_t>(0, drawn.legs.size());
}

RC_GTEST_PROP(Laws, LongerNeverLowersDropOrLoop, ()) {
    const Drawn near = *support::any_drawn();
    Drawn far = near;
    far.legs[any_leg(far)].length_m *= support::number_between(1, 4);
    const auto before = figures_of(near);
    const auto after = figures_of(far);
    RC_ASSERT(no_more(before.drop, after.drop));
    RC_ASSERT(no_more(before.zs_far, after.zs_far));
    RC_ASSERT(no_more(after.ln_far, before.ln_far));
    RC_ASSERT(no_more(after.le_least, before.le_least));
    RC_ASSERT(no_more(before.r1_r2_cold, after.r1_r2_cold));
}

RC_GTEST_PROP(Laws, ALongerRunNeverSpeedsTheDevice, ()) {
    const Drawn near = *support::any_drawn();
    Drawn far = near;
    far.legs[any_leg(far)].length_m *= support::number_between(1, 4);
    RC_ASSERT(figures_of(far).disconnection >= figures_of(near).disconnection * (1 - 1e-9));
}

RC_GTEST_PROP(Laws, ThickerCoresNeverRaiseDropOrLoopAndNeverLowerTheRating, ()) {
    const Drawn thin = *support::any_drawn();
    const std::size_t sizes = support::sizes_of(thin);
    RC_PRE(thin.size + 1 < sizes);
    Drawn thick = thin;
    thick.size = *rc::gen::inRange<std::size_t>(thin.size + 1, sizes);
    const auto before = figures_of(thin);
    const auto after = figures_of(thick);
    RC_ASSERT(no_more(after.drop, before.drop));
    RC_ASSERT(no_more(after.zs_far, before.zs_far));
    RC_ASSERT(no_more(before.iz, after.iz));
}

RC_GTEST_PROP(Laws, AThickerSeparateConductorNeverRaisesTheLoop, ()) {
    Drawn thin = *support::any_armoured();
    thin.protective = *rc::gen::element(Protective::separate, Protective::armour_and_separate);
    const std::size_t count = support::copper_conductors().size();
    thin.separate = *rc::gen::inRange<std::size_t>(0, count - 1);
    Drawn thick = thin;
    thick.separate = thin.separate + 1;
    RC_ASSERT(support::scheme_of(thin).first().separate->section <
              support::scheme_of(thick).first().separate->section);
    RC_ASSERT(no_more(figures_of(thick).zs_far, figures_of(thin).zs_far));
}

RC_GTEST_PROP(Laws, HotterSurroundingsNeverRaiseTheRating, ()) {
    const Drawn cool = *support::any_drawn();
    Drawn hot = cool;
    const double kelvins = support::number_between(0, 20);
    hot.ground_c += kelvins;
    hot.legs[any_leg(hot)].temperature_c += kelvins;
    RC_ASSERT(no_more(figures_of(hot).iz, figures_of(cool).iz));
}

RC_GTEST_PROP(Laws, MoreCircuitsBesideItNeverRaiseTheRating, ()) {
    const Drawn alone = *support::any_drawn();
    Drawn crowded = alone;
    crowded.legs[any_leg(crowded)].other_circuits += *rc::gen::inRange(0, 5);
    RC_ASSERT(no_more(figures_of(crowded).iz, figures_of(alone).iz));
}

RC_GTEST_PROP(Laws, DrierSoilAndDeeperLayingNeverRaiseTheRating, ()) {
    const Drawn wet = *support::any_drawn();
    Drawn dry = wet;
    dry.soil_k_m_w = std::fmin(3, wet.soil_k_m_w + support::number_between(0, 2));
    dry.legs[any_leg(dry)].depth_m += support::number_between(0, 1);
    RC_ASSERT(no_more(figures_of(dry).iz, figures_of(wet).iz));
}

RC_GTEST_PROP(Laws, MoreLoadNeverLowersTheDrop, ()) {
    const Drawn light = *support::any_drawn();
    Drawn heavy = light;
    heavy.load_a += support::number_between(0, 40);
    RC_ASSERT(no_more(figures_of(light).drop, figures_of(heavy).drop));
}

RC_GTEST_PROP(Laws, TheDropIsNeverNegativeNorMoreThanTheVoltage, ()) {
    const auto figures = figures_of(*support::any_drawn());
    RC_ASSERT(figures.drop >= volts(0));
    RC_ASSERT(figures.drop <= volts(230));
}

RC_GTEST_PROP(Laws, AStifferSupplyNeverLowersAFaultCurrent, ()) {
    const Drawn weak = *support::any_drawn();
    Drawn stiff = weak;
    stiff.ze_ohm = weak.ze_ohm / support::number_between(1, 5);
    stiff.zn_ohm = weak.zn_ohm / support::number_between(1, 5);
    const auto before = figures_of(weak);
    const auto after = figures_of(stiff);
    RC_ASSERT(no_more(before.ln_near, after.ln_near));
    RC_ASSERT(no_more(before.ln_far, after.ln_far));
    RC_ASSERT(no_more(before.le_far, after.le_far));
    RC_ASSERT(no_more(before.le_least, after.le_least));
    RC_ASSERT(no_more(after.zs_far, before.zs_far));
}

RC_GTEST_PROP(Laws, ASecondWayBackNeverRaisesTheLoop, ()) {
    Drawn one = *support::any_armoured();
    one.family = tables::Family::armoured_xlpe_copper;
    one.cores = one.phases == 3 ? 5 : 3;
    one.size = *rc::gen::inRange<std::size_t>(0, support::sizes_of(one));
    one.further.clear();
    for (auto& leg : one.legs) leg.stretch = 0;
    one.protective = *rc::gen::element(Protective::armour, Protective::core);
    Drawn two = one;
    two.protective = Protective::core_and_armour;
    RC_ASSERT(no_more(figures_of(two).zs_far, figures_of(one).zs_far));
}

RC_GTEST_PROP(Laws, HeatIsFiniteOnlyIfTheDeviceOperates, ()) {
    Drawn drawn = *support::any_drawn();
    drawn.earthing = BuildingEarthing::supply_earth;  // no residual current device to help
    RC_PRE(!residual_at_head(support::scheme_of(drawn)));
    const auto figures = figures_of(drawn);
    if (std::isinf(figures.disconnection.number())) RC_ASSERT(std::isinf(figures.heat_path));
    if (std::isfinite(figures.heat_live)) RC_ASSERT(std::isfinite(figures.disconnection.number()));
}

/// An earth fault that stays what it is somewhere on the first stretch: any current between the
/// least of conductors hardly warmed and the largest, and every other time the one just short of
/// what trips the device at once.
Amperes any_earth_fault(const StretchFaults<Silent>& at, const tables::Device& device) {
    const Amperes low = at.early.armour;
    const Amperes any = low * std::pow(at.earth_most / low, support::number_between(0, 1));
    const Amperes short_of_it = device.points.back().current.value * (1 - 1e-9);
    const bool on_the_run = short_of_it > low && short_of_it < at.earth_most;
    return on_the_run && *rc::gen::arbitrary<bool>() ? short_of_it : any;
}

RC_GTEST_PROP(Laws, NoEarthFaultAlongTheRunHeatsTheArmourMoreThanTheFigureSays, ()) {
    Drawn drawn = *support::any_armoured();
    drawn.protective = Protective::armour;
    const auto figures = figures_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const Amperes current = any_earth_fault(figures.at[0], *scheme.device);
    Silent ledger;
    const Name name{"x", ""};
    auto energy = device::let_through(ledger, name, *scheme.device, current);
    if (const auto rcd = residual_at_head(scheme)) {
        energy = least(energy, squared(current) * rcd->longest.value);
    }
    const tables::Cable& cable = *scheme.first().cable;
    const auto& make = tables::make_of(support::catalogue(), cable);
    const auto stands =
        cable::withstand(ledger, name, make.armour.k.value, cable.armour_area.value);
    RC_ASSERT(energy.number() <= figures.heat_path * stands.number() * (1 + 1e-6));
}

RC_GTEST_PROP(Laws, TheSmallestFaultCurrentNeverExceedsTheLargest, ()) {
    const Drawn drawn = *support::any_drawn();
    const auto figures = figures_of(drawn);
    RC_ASSERT(figures.ln_least < figures.ln_far);
    if (drawn.phases == 3) {
        RC_ASSERT(figures.ll_least < figures.ll_far);
        RC_ASSERT(figures.ll_far < figures.lll_far);
        RC_ASSERT(figures.lll_far < figures.lll_near);
    }
    RC_ASSERT(figures.le_least < figures.le_far);
    RC_ASSERT(figures.le_far < figures.le_near);
}

}  // namespace
}  // namespace toft::study
