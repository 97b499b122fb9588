#include "study/heat_figures.h"

#include "cable/fault_heat.h"
#include "device/curve.h"
#include "network/loop.h"

namespace toft::study {

namespace {

using tables::FaultHeat;

/// Energies that faults on one stretch and beyond it may let through, against what its conductors
/// withstand.
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

    using Energy = ValueIn<L, AmpereSquareSeconds>;

    /// What the live cores and the weakest conductor of all withstand.
    struct Withstood {
        Energy live;
        Energy all;
    };

    Withstood withstood() {
        live_stands_ = stands({"k2S2.live", "k.live"}, "what a live core withstands", make_.live,
                              section("S", "section of a core", stretch_.cable->section));
        path_stands_ = path_withstand();
        return {live_stands_, least(live_stands_, path_stands_)};
    }

    /// Energies of the faults of this stretch; `on_the_way` is the least withstood from the house
    /// to its end.
    void faults(const Withstood& on_the_way) {
        neutral_ =
            most(by_device("I2t.near", "energy of a short circuit, near end", at_.short_most),
                 smallest(Kind{&Least::neutral, "I2t.early.n", "I2t.first.n", "I2t.far", nullptr},
                          on_the_way.live));
        auto earth = most(
            until_open("I2t.e.near", "energy of an earth fault, near end", at_.earth_most,
                       "I2t.rcd"),
            smallest(Kind{&Least::earth, "I2t.early.e", "I2t.first.e", "I2t.e.far", "I2t.rcd.far"},
                     on_the_way.all));
        if (residual_) earth = most(earth, energy_where_equal());
        if (stretch_.armoured() && !armour_serves(stretch_.protective)) {
            earth = most(earth, smallest(Kind{&Least::armour, "I2t.early.arm", "I2t.first.arm",
                                              "I2t.arm.far", "I2t.rcd.arm"},
                                         on_the_way.all));
        }
        earth_ = ledger_.let({"I2t.earth", "largest energy of an earth fault", part_}, earth);
    }

    /// A fault on a later stretch flows through this one as well.
    void also_carries(const HeatWork& later) {
        neutral_ =
            ledger_.let({"I2t.n.here", "largest energy of a short circuit from here on", part_},
                        most(neutral_, later.neutral_));
        earth_ = ledger_.let({"I2t.e.here", "largest energy of an earth fault from here on", part_},
                             most(earth_, later.earth_));
    }

    void judge() {
        live_ = ledger_.let(
            {"heat.live", "fault heat over what the live cores withstand", part_, "", "434.5.2"},
            most(neutral_, earth_) / live_stands_);
        path_ = ledger_.let({"heat.path", "fault heat over what the weakest of the path withstands",
                             part_, "", "543.1.3"},
                            earth_ / path_stands_);
    }

    const Share& live() const { return live_; }
    const Share& path() const { return path_; }

private:
    using Current = ValueIn<L, Amperes>;
    using Least = typename StretchFaults<L>::Least;

    /// A fault of the smallest current with the symbols of its lines; `rcd` is null where no
    /// residual current device sees it.
    struct Kind {
        Current Least::*current;
        const char *early, *first, *far, *rcd;
    };

    Energy by_device(const char* symbol, const char* meaning, const Current& i) {
        return device::let_through(ledger_, {symbol, meaning, part_}, *scheme_.device, i);
    }

    /// Until the RCD at the head or the overcurrent device has opened, whichever is first.
    Energy until_open(const char* symbol, const char* meaning, const Current& i,
                      const char* with_rcd) {
        const auto own = by_device(symbol, meaning, i);
        if (!residual_) return own;
        const auto t =
            ledger_.table({"t.rcd", "longest break time of the RCD", part_}, residual_->longest);
        return ledger_.let({with_rcd, "energy until the RCD or the device has opened", part_},
                           least(own, squared(i) * t));
    }

    /// Energy of the smallest fault at the far end. One that ends before it has used a tenth of
    /// what anything on its way withstands never falls below the current of conductors so little
    /// heated; any other is taken with conductors as hot as they may get.
    Energy smallest(const Kind& kind, const Energy& withstood) {
        const char* soon = "energy of the smallest fault while the conductors are hardly warmed";
        const auto brief = most(by_device(kind.early, soon, at_.early.*kind.current),
                                by_device(kind.first, soon, at_.working.*kind.current));
        if (plain(brief) <= plain(withstood) * early_share) return brief;
        const Current& hot = at_.hot.*kind.current;
        const char* meaning = "energy of the smallest fault, far end";
        return kind.rcd ? until_open(kind.far, meaning, hot, kind.rcd)
                        : by_device(kind.far, meaning, hot);
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

    /// What a withstand is called, and the constant k in it.
    struct HeatSymbols {
        const char* withstand;
        const char* k;
    };

    Energy stands(HeatSymbols symbols, const char* meaning, const FaultHeat& heat,
                  const ValueIn<L, SquareMillimetres>& s) {
        const auto k = ledger_.table({symbols.k, "fault heat constant", part_}, heat.k);
        return cable::withstand(ledger_, {symbols.withstand, meaning, part_}, k, s);
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
            also(stands({"k2S2.armour", "k.armour"}, "what the armour withstands", make_.armour,
                        ledger_.table({"S.arm", "section of the armour", part_},
                                      stretch_.cable->armour_area)));
        }
        if (core_serves(stretch_.protective)) {
            also(stands({"k2S2.core", "k.core"}, "what the protective core withstands", make_.core,
                        section("S.core", "section of the protective core", stretch_.cable->cpc)));
        }
        if (separate_serves(stretch_.protective)) {
            also(stands(
                {"k2S2.sep", "k.sep"}, "what the separate conductor withstands",
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
    Energy live_stands_{};
    Energy path_stands_{};
    Energy neutral_{};
    Energy earth_{};
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
    std::array<std::optional<HeatWork<L>>, most_stretches> works;
    typename HeatWork<L>::Withstood on_the_way{};
    for (std::size_t i = 0; i < scheme.stretches; ++i) {
        works[i].emplace(ledger, setting, scheme, f.at[i], i);
        const auto here = works[i]->withstood();
        on_the_way.live = i == 0 ? here.live : least(on_the_way.live, here.live);
        on_the_way.all = i == 0 ? here.all : least(on_the_way.all, here.all);
        works[i]->faults(on_the_way);
    }
    for (std::size_t i = scheme.stretches; i-- > 0;) {
        HeatWork<L>& work = *works[i];
        if (i + 1 < scheme.stretches) work.also_carries(*works[i + 1]);
        work.judge();
        const bool last = i + 1 == scheme.stretches;
        f.heat_live = last ? work.live() : most(f.heat_live, work.live());
        f.heat_path = last ? work.path() : most(f.heat_path, work.path());
    }
    f.heat = ledger.let({"heat", "fault heat over what is withstood, worst conductor"},
                        most(f.heat_live, f.heat_path));
}

template void work_out_heat(Silent&, const Setting<Silent>&, const RunScheme&, Figures<Silent>&);
template void work_out_heat(Recording&, const Setting<Recording>&, const RunScheme&,
                            Figures<Recording>&);

}  // namespace toft::study
