#include "study/heat_figures.h"

#include "cable/fault_heat.h"
#include "device/curve.h"
#include "network/loop.h"

namespace toft::study {

namespace {

using tables::FaultHeat;

/// Energies that faults of one stretch may let through, against what its conductors withstand.
template <class L>
class HeatWork {
public:
    HeatWork(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
             const StretchFaults<L>& at, std::size_t i)
        : ledger_(ledger),
          s_(setting),
          scheme_(scheme),
          stretch_(scheme.stretch[i]),
          make_(tables::make_of(*setting.catalogue, *stretch_.cable)),
          at_(at),
          part_(scheme.stretches == 1 ? 0 : static_cast<int>(i) + 1),
          residual_(residual_at_head(scheme)) {}

    using Share = ValueIn<L, double>;

    void work() {
        const auto live = stands("k2S2.live", "what a live core withstands", make_.live,
                                 section("S", "section of a core", stretch_.cable->section));
        const auto weakest = path_withstand();
        const auto neutral =
            most(by_device("I2t.near", "energy of a short circuit, near end", at_.short_most),
                 smallest({&Least::neutral, false}, live));
        auto earth =
            most(until_open("I2t.e.near", "energy of an earth fault, near end", at_.earth_most),
                 smallest({&Least::earth, true}, least(live, weakest)));
        if (residual_) earth = most(earth, energy_where_equal());
        if (stretch_.armoured() && !armour_serves(stretch_.protective)) {
            earth = most(earth, smallest({&Least::armour, true}, least(live, weakest)));
        }
        earth = ledger_.let({"I2t.earth", "largest energy of an earth fault", part_}, earth);
        live_ = ledger_.let(
            {"heat.live", "fault heat over what the live cores withstand", part_, "", "434.5.2"},
            most(neutral, earth) / live);
        path_ = ledger_.let({"heat.path", "fault heat over what the weakest of the path withstands",
                             part_, "", "543.1.3"},
                            earth / weakest);
    }

    const Share& live() const { return live_; }
    const Share& path() const { return path_; }

private:
    using Energy = ValueIn<L, AmpereSquareSeconds>;
    using Current = ValueIn<L, Amperes>;
    using Least = typename StretchFaults<L>::Least;

    /// A fault of the smallest current, and whether a residual current device sees it.
    struct Kind {
        Current Least::*current;
        bool residual;
    };

    Energy by_device(const char* symbol, const char* meaning, const Current& i) {
        return device::let_through(ledger_, {symbol, meaning, part_}, *scheme_.device, i);
    }

    /// Until the RCD at the head or the overcurrent device has opened, whichever is first.
    Energy until_open(const char* symbol, const char* meaning, const Current& i) {
        const auto own = by_device(symbol, meaning, i);
        if (!residual_) return own;
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the RCD", part_}, residual_->longest);
        return ledger_.let({"I2t.rcd", "energy until the RCD or the device has opened", part_},
                           least(own, squared(i) * t));
    }

    /// Energy of the smallest fault at the far end. One that ends before it has used a tenth of
    /// what is withstood never falls below the current of conductors so little heated; any other is
    /// taken with conductors half way to their highest temperature.
    Energy smallest(const Kind& kind, const Energy& withstood) {
        const Current& early = at_.early.*kind.current;
        const Current& first = at_.working.*kind.current;
        const auto t = device::operating_time(
            ledger_,
            {"t.early", "time the device may take while the conductors are hardly warmed", part_},
            *scheme_.device, early);
        const auto brief =
            ledger_.let({"I2t.early", "energy of the smallest fault if it ends so soon", part_},
                        squared(first) * t);
        if (plain(brief) <= plain(withstood) * early_share) return brief;
        const Current& hot = at_.hot.*kind.current;
        const char* meaning = "energy of the smallest fault, far end";
        return kind.residual ? until_open("I2t.e.far", meaning, hot)
                             : by_device("I2t.far", meaning, hot);
    }

    Energy energy_where_equal() {
        const auto i = device::operating_current(
            ledger_, {"I.equal", "current at which device and RCD take as long", part_},
            *scheme_.device, residual_->longest.value);
        if (plain(i) > plain(at_.earth_most) || plain(i) <= plain(at_.hot.armour)) {
            return ledger_.stated({"I2t.equal", "no fault of the run has that current", part_},
                                  ampere_square_seconds(0), "figures");
        }
        // Just short of the current that trips a breaker at once, the RCD alone ends the fault.
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the RCD", part_}, residual_->longest);
        return ledger_.let(
            {"I2t.equal", "energy of an earth fault just short of that current", part_},
            squared(i) * t);
    }

    Energy stands(const char* symbol, const char* meaning, const FaultHeat& heat,
                  const ValueIn<L, SquareMillimetres>& s) {
        const auto k = ledger_.table({"k", "fault heat constant", part_}, heat.k);
        return cable::withstand(ledger_, {symbol, meaning, part_}, k, s);
    }

    ValueIn<L, SquareMillimetres> section(const char* symbol, const char* meaning,
                                          SquareMillimetres s) {
        return ledger_.stated({symbol, meaning, part_}, s, "scheme");
    }

    /// Every conductor of the path must stand the whole energy: near the fault it may carry it
    /// alone.
    Energy path_withstand() {
        bool any = false;
        Energy weakest{};
        const auto also = [&](const Energy& e) {
            weakest = any ? least(weakest, e) : e;
            any = true;
        };
        if (stretch_.armoured()) {
            also(stands("k2S2.armour", "what the armour withstands", make_.armour,
                        ledger_.table({"S.arm", "section of the armour", part_},
                                      stretch_.cable->armour_area)));
        }
        if (core_serves(stretch_.protective)) {
            also(stands("k2S2.core", "what the protective core withstands", make_.core,
                        section("S.core", "section of the protective core", stretch_.cable->cpc)));
        }
        if (separate_serves(stretch_.protective)) {
            also(stands(
                "k2S2.sep", "what the separate conductor withstands",
                s_.catalogue->cable_constants.separate,
                section("S.sep", "section of the separate conductor", stretch_.separate->section)));
        }
        return weakest;
    }

    L& ledger_;
    const Setting<L>& s_;
    const RunScheme& scheme_;
    const Stretch& stretch_;
    const tables::Make& make_;
    const StretchFaults<L>& at_;
    int part_;
    std::optional<HeadResidual> residual_;
    Share live_{};
    Share path_{};
};

/// Time the overcurrent device may take for the smallest earth fault with the conductors warm.
template <class L>
ValueIn<L, Seconds> disconnection_time(L& ledger, const Setting<L>& s, const RunScheme& scheme,
                                       const Figures<L>& f) {
    const auto i = network::fault_current(ledger, {"Ie.zs", "earth fault current at the far end"},
                                          s.supply.c_min, s.supply.u0, f.zs_far);
    return device::operating_time(ledger, {"t.dis", "time the overcurrent device may take"},
                                  *scheme.device, i);
}

}  // namespace

template <class L>
void work_out_heat(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& f) {
    f.disconnection = disconnection_time(ledger, setting, scheme, f);
    for (std::size_t i = 0; i < scheme.stretches; ++i) {
        HeatWork<L> work(ledger, setting, scheme, f.at[i], i);
        work.work();
        f.heat_live = i == 0 ? work.live() : most(f.heat_live, work.live());
        f.heat_path = i == 0 ? work.path() : most(f.heat_path, work.path());
    }
    f.heat = ledger.let({"heat", "fault heat over what is withstood, worst conductor"},
                        most(f.heat_live, f.heat_path));
}

template void work_out_heat(Silent&, const Setting<Silent>&, const RunScheme&, Figures<Silent>&);
template void work_out_heat(Recording&, const Setting<Recording>&, const RunScheme&,
                            Figures<Recording>&);

}  // namespace toft::study
