#pragma once
// The parts of what is said of the ground, one file each. Private to answer.

#include "groundwork/ground.h"
#include "study/electrode.h"

namespace toft::answer {

/// What all parts are worked out from.
struct GroundCase {
    const Question& question;
    const study::Setting<Silent>& setting;  ///< of the run to the outbuilding, at the worse end
    study::SoilSetting soil;                ///< the soil from its worse to its better end
    study::GroundMemo& memo;
};

SoilAnswer soil_answer(const site::Ground& ground, const study::SoilSetting& soil,
                       const study::GroundMemo& memo);

/// Everything that the house's earthing terminal joins, with the supply's neutral lost.
struct HouseEarth {
    Ohms low{}, high{};
    const char* from = "";
};
HouseEarth house_earth(const GroundCase& c);

/// Share of the rise of an earth of that resistance which reaches ground `gap` from its nearest
/// metal, as study takes it: no less than that of real electrodes.
double share_reached(OhmMetres resistivity, Ohms earth, Metres gap);

/// Year, length and targets of the outbuilding's electrode.
void electrode_answer(const GroundCase& c, GroundSideAnswer& side);

SeparationAnswer separation_answer(const GroundCase& c);

LostNeutralAnswer lost_neutral_answer(const GroundCase& c, const YearAnswer& year);

}  // namespace toft::answer
