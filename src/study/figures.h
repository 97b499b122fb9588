#pragma once
// What physics says of one scheme in one setting: currents, ratings, drop, loops, faults, heat. No
// limit of any rule stands here.

#include "base/impedance.h"
#include "study/scheme.h"
#include "study/setting.h"

namespace toft::study {

/// How much has been worked out. Later stages need the earlier ones. Up to `current` nothing
/// depends on the device, on where it stands or on a residual current device: the search works
/// those stages out once for all heads of a run.
enum class Stage { none, rating, drop, current, heat };

/// Resistance states of the protective path and the line: at 20 °C as tests find it, at the highest
/// working temperature, and half way from there to the temperature the worst fault may leave.
enum class Heat { cold, working, fault };

template <class L>
struct Figures {
    Stage done = Stage::none;

    // rating
    ValueIn<L, Amperes> iz{};  ///< rating of the cable on its worst leg
    int governing_leg = 1;     ///< counted from 1

    // drop
    ValueIn<L, Volts> drop{};
    ValueIn<L, double> drop_percent{};

    // current: loops to the far end and what they drive
    ValueIn<L, Ohms> zs_far{};  ///< earth fault, conductors at working temperature, the largest
    ValueIn<L, Ohms>
        r1_r2_cold{};  ///< line and protective path of the run at 20 °C, as a test reads
    ValueIn<L, Amperes> ln_near{};        ///< largest current, line to neutral, at the near end
    ValueIn<L, Amperes> le_near{};        ///< … line to earth
    ValueIn<L, Amperes> ln_near_least{};  ///< smallest current, line to neutral, at the near end
    ValueIn<L, Amperes> le_near_least{};  ///< … line to earth
    ValueIn<L, Amperes> ln_far{};         ///< largest, line to neutral, at the far end
    ValueIn<L, Amperes> le_far{};         ///< … line to earth
    ValueIn<L, Amperes> ln_least{};       ///< smallest, line to neutral, at the far end
    ValueIn<L, Amperes> le_least{};       ///< … line to earth
    ValueIn<L, Amperes> arm_least{};      ///< … line to the armour, through the armour alone

    // heat
    ValueIn<L, Seconds>
        disconnection{};  ///< of the smallest earth fault, by the overcurrent device
    ValueIn<L, double>
        heat_live{};  ///< worst I2t of a fault over what the live conductors withstand
    ValueIn<L, double> heat_path{};  ///< the same for the protective path and the armour
};

/// Works out `figures` up to `stage`; stages already done are left alone.
template <class L>
void work_out(L& ledger, const Setting<L>& setting, const RunScheme& scheme, Stage stage,
              Figures<L>& figures);

/// The largest loop for which the device at the head operates within `time`: c.min U0 / Ia.
template <class L>
ValueIn<L, Ohms> largest_loop_for(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                                  Seconds time);

}  // namespace toft::study
