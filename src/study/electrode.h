#pragma once
// An outbuilding's own electrode: its wires, its resistance in the soils there may be, and through
// the year. Where a closed form holds it is written as one; else the field of its wires is solved.
// Page: docs/methods/electrode-year.md.

#include "field/wire.h"
#include "soil/fall_of_potential.h"
#include "study/media.h"
#include "study/soil.h"

#include <string>
#include <vector>

namespace toft::study {

/// What an electrode counts as that cannot be worked out, or is none.
inline constexpr Ohms unusable = ohms(1e6);

/// An electrode as it would be built.
struct BuiltElectrode {
    std::vector<field::Wire> wires;
    Metres concrete{};  ///< the wires stand for concrete of this length round the metal; 0: bare
    double concrete_share = 0;  ///< ln of its diameter over that of the metal
    bool usual = false;         ///< nothing was stated: the rod that is usual
    bool rods = true;
    double count = 1;
    Metres length{}, diameter{}, spacing{};
};

BuiltElectrode built(const site::Electrode& electrode, const tables::Catalogue& catalogue);

/// "2 rods of 2.4 m, 2.4 m apart".
std::string electrode_words(const BuiltElectrode& electrode, const site::Electrode& stated);

/// What its test by fall of potential says; none without one.
std::optional<soil::FallResult> fall_result(const site::Electrode& electrode);

/// What was read of it: stated, or by fall of potential with its error.
site::Fact<Ohms> reading_of(const site::Electrode& electrode);

/// `count` vertical rods of that length and diameter in a line from the origin.
BuiltElectrode rods_in_a_line(int count, Metres length, Metres diameter, Metres spacing);

/// Its resistance in one soil; nothing where the field cannot be solved, or there is no soil.
std::optional<Ohms> resistance_in(const field::Medium* soil, const BuiltElectrode& electrode,
                                  OhmMetres concrete);

/// Through the year: the lowest and the highest it may be, over all soils it may stand in.
struct ThroughTheYear {
    Ohms low{};
    Ohms high{};
    const char* low_when = "";
    const char* high_when = "";
    double worst_season = 1;  ///< the most that a season multiplies it by, in any of the soils
    bool solved = false;
};

ThroughTheYear through_the_year(const tables::Catalogue& catalogue, const SoilSetting& soil,
                                const BuiltElectrode& electrode, Media& media);
ThroughTheYear through_the_year(const tables::Catalogue& catalogue, const SoilSetting& soil,
                                const BuiltElectrode& electrode);

}  // namespace toft::study
