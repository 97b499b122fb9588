#include "study/fault_figures.h"

#include "network/loop.h"
#include "study/path.h"

namespace toft::study {

namespace {

using network::fault_current;
using network::largest_loop;
using network::smallest_loop;

/// Conductors from the origin of the run up to some place on it.
template <class L>
struct Reach {
    ImpedanceIn<L> line;
    ImpedanceIn<L> serving;

    void extend(const FaultPath<L>& path, bool first) {
        line = first ? path.line : line + path.line;
        serving = first ? path.serving : serving + path.serving;
    }
};

template <class L>
class CurrentWork {
public:
    CurrentWork(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Figures<L>& figures)
        : ledger_(ledger), s_(setting), scheme_(scheme), f_(figures) {}

    void all() {
        largest();
        working();
        smallest(Heat::early);
        smallest(Heat::fault);
    }

private:
    int part(std::size_t i) const { return scheme_.stretches == 1 ? 0 : static_cast<int>(i) + 1; }

    FaultPath<L> path(std::size_t i, Heat heat, bool longest) {
        const StretchSetting<L>& at = s_.stretches[i];
        return fault_path(
            ledger_, s_, scheme_.stretch[i],
            PathAt<L>{heat, longest ? at.length_most : at.length_least, part(i), longest});
    }

    /// Runs before this one are as hot as it is, or hotter.
    const ValueIn<L, Ohms>& ze_at(Heat heat) const {
        return heat == Heat::working ? s_.supply.ze_most : s_.supply.ze_hot;
    }

    auto most_current(const Name& name, const ValueIn<L, Ohms>& loop) {
        return fault_current(ledger_, name, s_.supply.c_max, s_.supply.u0, loop);
    }
    auto least_current(const Name& name, const ValueIn<L, Ohms>& loop) {
        return fault_current(ledger_, name, s_.supply.c_min, s_.supply.u0, loop);
    }

    /// Line to line: the root of three times the voltage over twice the impedance of a line.
    auto between_lines(const Name& name, const ValueIn<L, Amperes>& three_lines) {
        const auto share = ledger_.stated({"root3.half", "line to line over three lines together"},
                                          root(3.0) / 2, "three phases");
        return ledger_.let(name, three_lines * share);
    }

    void largest() {
        f_.ln_near = most_current({"In.near", "largest line-neutral fault current, near end"},
                                  s_.supply.zn_least);
        if (s_.phases == 1) f_.ln_near = s_.supply.pscc;
        f_.le_near =
            most_current({"Ie.near", "largest earth fault current, near end"}, s_.supply.ze_least);
        Reach<L> reach;
        for (std::size_t i = 0; i < scheme_.stretches; ++i) {
            f_.at[i].short_most = i == 0 ? s_.supply.pscc : live_most(reach, part(i));
            f_.at[i].earth_most = i == 0 ? f_.le_near : earth_most(reach, part(i));
            reach.extend(path(i, Heat::cold, false), i == 0);
        }
        f_.ln_far = most_current({"In.far", "largest line-neutral fault current, far end"},
                                 neutral_loop(reach, 0));
        f_.le_far = earth_most(reach, 0);
        if (s_.phases == 3) between_lines_most(reach);
    }

    ValueIn<L, Ohms> neutral_loop(const Reach<L>& reach, int number) {
        return smallest_loop(ledger_,
                             {"Zn.far.least", "smallest line-neutral loop, far end", number},
                             s_.supply.zn_least, reach.line + reach.line);
    }

    ValueIn<L, Amperes> three_lines_most(const Reach<L>& reach, int number) {
        const auto z =
            smallest_loop(ledger_, {"Zl.far.least", "smallest impedance of a line", number},
                          s_.supply.zl_least, reach.line);
        return most_current({"I3.far", "largest fault current of three lines, far end", number}, z);
    }

    /// Largest between live conductors where a stretch begins.
    ValueIn<L, Amperes> live_most(const Reach<L>& reach, int number) {
        if (s_.phases == 3) return three_lines_most(reach, number);
        return most_current({"In.begin", "largest line-neutral fault current there", number},
                            neutral_loop(reach, number));
    }

    ValueIn<L, Amperes> earth_most(const Reach<L>& reach, int number) {
        const auto z =
            smallest_loop(ledger_, {"Zs.far.least", "smallest earth fault loop, far end", number},
                          s_.supply.ze_least, reach.line + reach.serving);
        return most_current({"Ie.far", "largest earth fault current, far end", number}, z);
    }

    void between_lines_most(const Reach<L>& reach) {
        f_.lll_near = most_current({"I3.near", "largest fault current of three lines, near end"},
                                   s_.supply.zl_least);
        f_.lll_far = three_lines_most(reach, 0);
        f_.ll_near = between_lines({"Ill.near", "largest line-line fault, near end"}, f_.lll_near);
        f_.ll_far = between_lines({"Ill.far", "largest line-line fault, far end"}, f_.lll_far);
    }

    void working() {
        Reach<L> cold;
        Reach<L> hot;
        ValueIn<L, Ohms> by_armour{};
        bool alone = false;
        for (std::size_t i = 0; i < scheme_.stretches; ++i) {
            cold.extend(path(i, Heat::cold, true), i == 0);
            const FaultPath<L> here = path(i, Heat::working, true);
            const Reach<L> before = hot;
            hot.extend(here, i == 0);
            f_.at[i].working = at_far_end(hot, Heat::working, part(i));
            if (!armour_alone(i)) continue;
            const auto loop = armour_loop(before, hot, here, Heat::working, i);
            f_.at[i].working.armour =
                least_current({"Ie.arm.work", "fault to the armour, at first", part(i)}, loop);
            by_armour = alone ? most(by_armour, loop) : loop;
            alone = true;
        }
        f_.r1_r2_cold = ledger_.let({"R1.R2", "line and protective path of the run at 20 °C"},
                                    cold.line.r + cold.serving.r);
        f_.zs_far = largest_loop(
            ledger_,
            {"Zs", "earth fault loop at the far end, conductors at working temperature", 0, "",
             "411.4.4"},
            s_.supply.ze_most, hot.line + hot.serving);
        if (!alone) return;
        f_.zs_far =
            ledger_.let({"Zs.worse", "the larger of that and the loop of a fault to the armour"},
                        most(f_.zs_far, by_armour));
    }

    /// A fault to the armour must clear, and the armour survive it, whether or not the scheme
    /// relies on it.
    bool armour_alone(std::size_t i) const {
        return scheme_.stretch[i].armoured() && !armour_serves(scheme_.stretch[i].protective);
    }

    /// Back through the armour of stretch `i` and from its beginning through what serves there.
    ValueIn<L, Ohms> armour_loop(const Reach<L>& before, const Reach<L>& with,
                                 const FaultPath<L>& here, Heat heat, std::size_t i) {
        const char* symbol = heat == Heat::working ? "Zs.armour"
                             : heat == Heat::early ? "Zs.arm.early"
                                                   : "Zs.arm.hot";
        const auto back = i == 0 ? here.armour : before.serving + here.armour;
        return largest_loop(ledger_, {symbol, "loop of a fault to the armour, far end", part(i)},
                            ze_at(heat), with.line + back);
    }

    /// Smallest currents at the end of a stretch.
    typename StretchFaults<L>::Least at_far_end(const Reach<L>& reach, Heat heat, int number) {
        struct Symbols {
            const char *zn, *in, *ze, *ie;
        };
        static constexpr Symbols symbols[] = {{"Zn.work", "In.work", "Zs.work", "Ie.work"},
                                              {"Zn.early", "In.early", "Zs.early", "Ie.early"},
                                              {"Zn.far", "In.least", "Zs.hot", "Ie.least"}};
        const Symbols& as = symbols[static_cast<int>(heat) - 1];
        typename StretchFaults<L>::Least least;
        const bool working = heat == Heat::working;
        const auto zn = largest_loop(ledger_, {as.zn, "line-neutral loop at the far end", number},
                                     working ? s_.supply.zn_working : s_.supply.zn_most,
                                     reach.line + reach.line);
        least.neutral =
            least_current({as.in, "smallest line-neutral fault current, far end", number}, zn);
        const auto ze = largest_loop(ledger_, {as.ze, "earth fault loop at the far end", number},
                                     ze_at(heat), reach.line + reach.serving);
        least.earth = least_current({as.ie, "smallest earth fault current, far end", number}, ze);
        least.armour = least.earth;
        return least;
    }

    void smallest(Heat heat) {
        Reach<L> reach;
        for (std::size_t i = 0; i < scheme_.stretches; ++i) {
            const FaultPath<L> here = path(i, heat, true);
            const Reach<L> before = reach;
            reach.extend(here, i == 0);
            auto& least = heat == Heat::early ? f_.at[i].early : f_.at[i].hot;
            least = at_far_end(reach, heat, part(i));
            if (!armour_alone(i)) continue;
            const auto loop = armour_loop(before, reach, here, heat, i);
            least.armour = least_current({heat == Heat::early ? "Ie.arm.early" : "Ie.arm",
                                          "smallest current of a fault to the armour", part(i)},
                                         loop);
        }
        if (heat != Heat::fault) return;
        const auto& last = f_.at[scheme_.stretches - 1].hot;
        f_.ln_least = last.neutral;
        f_.le_least = last.earth;
        f_.ln_near_least = least_current(
            {"In.near.least", "smallest line-neutral fault current, near end"}, s_.supply.zn_most);
        f_.le_near_least = least_current(
            {"Ie.near.least", "smallest earth fault current, near end"}, s_.supply.ze_hot);
        if (s_.phases == 3) between_lines_least(reach);
    }

    void between_lines_least(const Reach<L>& reach) {
        const auto near = least_current({"I3.near.least", "smallest of three lines, near end"},
                                        s_.supply.zl_most);
        const auto z = largest_loop(ledger_, {"Zl.far", "impedance of a line, far end, hot"},
                                    s_.supply.zl_most, reach.line);
        const auto far = least_current({"I3.least", "smallest of three lines, far end"}, z);
        f_.ll_near_least =
            between_lines({"Ill.near.least", "smallest line-line fault, near end"}, near);
        f_.ll_least = between_lines({"Ill.least", "smallest line-line fault, far end"}, far);
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
    CurrentWork<L>(ledger, setting, scheme, f).all();
}

template void work_out_currents(Silent&, const Setting<Silent>&, const RunScheme&,
                                Figures<Silent>&);
template void work_out_currents(Recording&, const Setting<Recording>&, const RunScheme&,
                                Figures<Recording>&);

}  // namespace toft::study
