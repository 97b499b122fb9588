#include "study/fault_figures.h"

#include "cable/fault_heat.h"
#include "device/curve.h"
#include "network/loop.h"
#include "study/path.h"

namespace toft::study {

namespace {

using network::fault_current;
using network::largest_loop;
using network::smallest_loop;
using tables::FaultHeat;

/// A fault to the armour must clear, and the armour survive it, whether or not the scheme relies on
/// it.
bool armour_stands_alone(const RunScheme& scheme) { return !armour_serves(scheme.protective); }

template <class L>
void largest_currents(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    const auto cold = fault_path(ledger, s, scheme, Heat::cold, s.length_least);
    const auto c = s.supply.c_max;
    const auto u0 = s.supply.u0;
    f.ln_near = s.supply.pscc;
    f.le_near = fault_current(ledger, {"Ie.near", "largest earth fault current, near end"}, c, u0,
                              s.supply.ze_least);
    const auto zn = smallest_loop(ledger, {"Zn.far.least", "smallest line-neutral loop, far end"},
                                  s.supply.zn_least, cold.line + cold.line);
    f.ln_far =
        fault_current(ledger, {"In.far", "largest line-neutral fault current, far end"}, c, u0, zn);
    const auto ze = smallest_loop(ledger, {"Zs.far.least", "smallest earth fault loop, far end"},
                                  s.supply.ze_least, cold.line + cold.serving);
    f.le_far = fault_current(ledger, {"Ie.far", "largest earth fault current, far end"}, c, u0, ze);
}

template <class L>
void working_loop(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    const auto cold = fault_path(ledger, s, scheme, Heat::cold, s.length_most);
    f.r1_r2_cold = ledger.let({"R1.R2", "line and protective path of the run at 20 °C"},
                              cold.line.r + cold.serving.r);
    const auto hot = fault_path(ledger, s, scheme, Heat::working, s.length_most);
    f.zs_far =
        largest_loop(ledger,
                     {"Zs", "earth fault loop at the far end, conductors at working temperature", 0,
                      "", "411.4.4"},
                     s.supply.ze_most, hot.line + hot.serving);
    if (!armour_stands_alone(scheme)) return;
    const auto by_armour =
        largest_loop(ledger, {"Zs.armour", "loop of a fault to the armour, far end"},
                     s.supply.ze_most, hot.line + hot.armour);
    f.zs_far = ledger.let({"Zs.worse", "the larger of the two loops"}, most(f.zs_far, by_armour));
}

template <class L>
void smallest_currents(L& ledger, const Setting<L>& s, const RunScheme& scheme, Figures<L>& f) {
    const auto hot = fault_path(ledger, s, scheme, Heat::fault, s.length_most);
    const auto c = s.supply.c_min;
    const auto u0 = s.supply.u0;
    f.ln_near_least =
        fault_current(ledger, {"In.near.least", "smallest line-neutral fault current, near end"}, c,
                      u0, s.supply.zn_most);
    f.le_near_least =
        fault_current(ledger, {"Ie.near.least", "smallest earth fault current, near end"}, c, u0,
                      s.supply.ze_most);
    const auto zn = largest_loop(ledger, {"Zn.far", "line-neutral loop at the far end, hot"},
                                 s.supply.zn_most, hot.line + hot.line);
    f.ln_least = fault_current(ledger, {"In.least", "smallest line-neutral fault current, far end"},
                               c, u0, zn);
    const auto ze = largest_loop(ledger, {"Zs.hot", "earth fault loop at the far end, hot"},
                                 s.supply.ze_most, hot.line + hot.serving);
    f.le_least =
        fault_current(ledger, {"Ie.least", "smallest earth fault current, far end"}, c, u0, ze);
    f.arm_least = f.le_least;
    if (!armour_stands_alone(scheme)) return;
    const auto alone =
        largest_loop(ledger, {"Zs.arm.hot", "loop of a fault to the armour, far end, hot"},
                     s.supply.ze_most, hot.line + hot.armour);
    f.arm_least = fault_current(ledger, {"Ie.arm", "smallest current of a fault to the armour"}, c,
                                u0, alone);
}

/// Energies that faults along the run may let through.
template <class L>
class HeatWork {
public:
    HeatWork(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& figures)
        : ledger_(ledger), s_(setting), scheme_(scheme), f_(figures) {}

    void all() {
        const auto i = fault_current(ledger_, {"Ie.work", "earth fault current at the far end"},
                                     s_.supply.c_min, s_.supply.u0, f_.zs_far);
        f_.disconnection = device::operating_time(
            ledger_, {"t.dis", "time the overcurrent device may take"}, *scheme_.device, i);
        const auto neutral = ledger_.let(
            {"I2t.neutral", "largest energy of a line-neutral fault"},
            most(by_device({"I2t", "energy of a line-neutral fault, near end", 1}, f_.ln_near),
                 by_device({"I2t", "energy of a line-neutral fault, far end", 2}, f_.ln_least)));
        const auto earth = earth_energy();
        const auto live = stands({"k2S2.live", "what a live core withstands"}, make().live,
                                 section({"S", "section of a core"}, scheme_.cable->section));
        f_.heat_live = ledger_.let(
            {"heat.live", "fault heat over what the live cores withstand", 0, "", "434.5.2"},
            most(neutral, earth) / live);
        path_heat(earth);
    }

private:
    using Energy = ValueIn<L, AmpereSquareSeconds>;

    const tables::CableConstants& c() const { return s_.catalogue->cable_constants; }

    const tables::Make& make() const { return tables::make_of(*s_.catalogue, *scheme_.cable); }

    Energy by_device(const Name& name, const ValueIn<L, Amperes>& i) {
        return device::let_through(ledger_, name, *scheme_.device, i);
    }

    /// Until the RCD at the head or the overcurrent device has opened, whichever is first.
    Energy until_open(const Name& name, const ValueIn<L, Amperes>& i) {
        const auto own = by_device(name, i);
        if (!scheme_.rcd) return own;
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the RCD"}, scheme_.rcd->longest);
        return ledger_.let({"I2t.rcd", "energy until the RCD or the device has opened", name.part},
                           least(own, squared(i) * t));
    }

    /// Largest energy of any earth fault along the run. A fuse lets most through at the smallest
    /// current, a breaker at the largest; with an RCD the worst may be where both take as long.
    Energy earth_energy() {
        const auto near = until_open({"I2t", "energy of an earth fault, near end", 3}, f_.le_near);
        const auto far = until_open({"I2t", "energy of an earth fault, far end", 4}, f_.le_least);
        const Name name{"I2t.earth", "largest energy of an earth fault"};
        auto worst = most(near, far);
        if (scheme_.rcd) worst = most(worst, energy_where_equal());
        if (!armour_stands_alone(scheme_)) return ledger_.let(name, worst);
        const auto armour =
            until_open({"I2t", "energy of a fault to the armour, far end", 5}, f_.arm_least);
        return ledger_.let(name, most(worst, armour));
    }

    Energy energy_where_equal() {
        const auto i = device::operating_current(
            ledger_, {"I.equal", "current at which device and RCD take as long", 6},
            *scheme_.device, scheme_.rcd->longest.value);
        if (plain(i) > plain(f_.le_near) || plain(i) <= plain(f_.arm_least)) {
            return ledger_.stated({"I2t", "no fault of the run has that current", 6},
                                  ampere_square_seconds(0), "figures");
        }
        // Just short of the current that trips a breaker at once, the RCD alone ends the fault.
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the RCD"}, scheme_.rcd->longest);
        return ledger_.let({"I2t", "energy of an earth fault just short of that current", 6},
                           squared(i) * t);
    }

    Energy stands(const Name& name, const FaultHeat& heat, const ValueIn<L, SquareMillimetres>& s) {
        const auto k = ledger_.table({"k", "fault heat constant", name.part}, heat.k);
        return cable::withstand(ledger_, name, k, s);
    }

    ValueIn<L, SquareMillimetres> section(const Name& name, SquareMillimetres s) {
        return ledger_.stated(name, s, "scheme");
    }

    /// Every conductor of the path must stand the whole energy: near the fault it may carry it
    /// alone.
    void path_heat(const Energy& earth) {
        const auto area =
            ledger_.table({"S.arm", "section of the armour"}, scheme_.cable->armour_area);
        auto weakest =
            stands({"k2S2.armour", "what the armour withstands", 1}, make().armour, area);
        if (core_serves(scheme_.protective)) {
            weakest = least(weakest, stands({"k2S2.core", "what the protective core withstands", 2},
                                            make().core,
                                            section({"S.core", "section of the protective core"},
                                                    scheme_.cable->section)));
        }
        if (separate_serves(scheme_.protective)) {
            weakest =
                least(weakest, stands({"k2S2.sep", "what the separate conductor withstands", 3},
                                      c().separate,
                                      section({"S.sep", "section of the separate conductor"},
                                              scheme_.separate->section)));
        }
        f_.heat_path =
            ledger_.let({"heat.path", "fault heat over what the weakest of the path withstands", 0,
                         "", "543.1.3"},
                        earth / weakest);
    }

    L& ledger_;
    const Setting<L>& s_;
    const RunScheme& scheme_;
    Figures<L>& f_;
};

}  // namespace

template <class L>
void work_out_currents(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                       Figures<L>& f) {
    largest_currents(ledger, setting, scheme, f);
    working_loop(ledger, setting, scheme, f);
    smallest_currents(ledger, setting, scheme, f);
}

template <class L>
void work_out_heat(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& f) {
    HeatWork<L>(ledger, setting, scheme, f).all();
}

template void work_out_currents(Silent&, const Setting<Silent>&, const RunScheme&,
                                Figures<Silent>&);
template void work_out_currents(Recording&, const Setting<Recording>&, const RunScheme&,
                                Figures<Recording>&);
template void work_out_heat(Silent&, const Setting<Silent>&, const RunScheme&, Figures<Silent>&);
template void work_out_heat(Recording&, const Setting<Recording>&, const RunScheme&,
                            Figures<Recording>&);

}  // namespace toft::study
