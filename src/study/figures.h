#pragma once
// What physics says of one scheme in one setting: currents, ratings, drop, loops, faults, heat. No
// limit of any rule stands here.

#include "base/impedance.h"
#include "circuit/design.h"
#include "study/scheme.h"
#include "study/setting.h"

namespace toft::study {

/// How much has been worked out. Later stages need the earlier ones, but for `circuits`, which
/// needs `current` and which `heat` does not need. Up to `circuits` nothing depends on the device
/// at the head, on where it stands or on a residual current device there: the search works those
/// stages out once for all heads of a run.
enum class Stage { none, rating, drop, current, circuits, heat };

/// Resistance states of the protective path and the line: at 20 °C as tests find it; at the highest
/// working temperature; a tenth of the way from there to the highest temperature a fault may leave,
/// for faults that end before they heat much; and that highest temperature.
enum class Heat { cold, working, early, fault };
using circuit::early_share;

/// Fault currents that bound the energy any fault of one stretch may let through.
template <class L>
struct StretchFaults {
    ValueIn<L, Amperes> short_most{};  ///< largest between live conductors, at its near end
    ValueIn<L, Amperes> earth_most{};  ///< largest to earth, at its near end
    /// Smallest at its far end, by how far the fault has heated the conductors.
    struct Least {
        ValueIn<L, Amperes> neutral{};  ///< line to neutral
        ValueIn<L, Amperes> earth{};    ///< line to what serves as protective conductor
        ValueIn<L, Amperes> armour{};   ///< line to an armour that does not serve, else as `earth`
    } working, early, hot;
};

template <class L>
struct Figures {
    Stage done = Stage::none;    ///< never `circuits`
    bool circuits_done = false;  ///< for what is done up to `current`

    // rating
    ValueIn<L, Amperes> iz{};  ///< rating of the cable on its worst leg
    int governing_leg = 1;     ///< counted from 1

    // drop
    ValueIn<L, Volts> drop{};
    ValueIn<L, double> drop_percent{};
    ValueIn<L, double> drop_path{};  ///< per cent, of this run and all before it
    ImpedanceIn<L> met;  ///< that the current of a line meets on the run, its share of the
                         ///< neutral's with it

    // current: loops to the far end and what they drive
    ValueIn<L, Ohms> zs_far{};  ///< earth fault, conductors at working temperature, the largest
    ValueIn<L, Ohms>
        r1_r2_cold{};  ///< line and protective path of the run at 20 °C, as a test reads
    ValueIn<L, Amperes> ln_near{};        ///< largest current, line to neutral, at the near end
    ValueIn<L, Amperes> le_near{};        ///< … line to earth
    ValueIn<L, Amperes> ln_near_least{};  ///< smallest current, line to neutral, at the near end
    ValueIn<L, Amperes> le_near_least{};  ///< … line to earth
    ValueIn<L, Amperes> lll_near{};       ///< largest, three lines together; three phases only
    ValueIn<L, Amperes> lll_far{};
    ValueIn<L, Amperes> ll_near{};  ///< largest, line to line
    ValueIn<L, Amperes> ll_far{};
    ValueIn<L, Amperes> ll_near_least{};  ///< smallest, line to line
    ValueIn<L, Amperes> ll_least{};
    ValueIn<L, Amperes> ln_far{};                     ///< largest, line to neutral, at the far end
    ValueIn<L, Amperes> le_far{};                     ///< … line to earth
    ValueIn<L, Amperes> ln_least{};                   ///< smallest, line to neutral, at the far end
    ValueIn<L, Amperes> le_least{};                   ///< … line to earth
    std::array<StretchFaults<L>, most_stretches> at;  ///< by stretch

    /// Final circuits of the building, beside those of the setting: the smallest that do.
    std::vector<circuit::CircuitDesign<L>> circuits;

    // heat
    ValueIn<L, Seconds>
        disconnection{};  ///< of the smallest earth fault, by the overcurrent device
    ValueIn<L, double>
        heat_live{};  ///< worst I2t of a fault over what the live conductors withstand
    ValueIn<L, double> heat_path{};  ///< the same for the protective path and the armour
    ValueIn<L, double> heat{};       ///< the worse of the two
};

/// Factors of the leg for the cable that lies there, with its twin beside it where there is one.
template <class L>
const cable::LegFactors<L>& factors_of(const LegSetting<L>& leg, const Stretch& stretch) {
    const auto family = static_cast<std::size_t>(stretch.cable->family);
    return stretch.parallel > 1 ? leg.paired[family] : leg.factors[family];
}

/// Works out `figures` up to `stage`; stages already done are left alone.
template <class L>
void work_out(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Stage stage,
              Figures<L>& figures);

/// The largest loop for which the device at the head operates within `time`: c.min U0 / Ia.
template <class L>
ValueIn<L, Ohms> largest_loop_for(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                                  Seconds time);

}  // namespace toft::study
