#pragma once
// The soil as the study takes it: what the survey knows best of readings, layers, a resistivity or
// the kind of ground, at the end of its range that a corner asks for. Page:
// docs/methods/soil.md.

#include "field/soil.h"
#include "soil/soil_fit.h"
#include "study/settle.h"

namespace toft::study {

enum class SoilKnown { readings, rods, layers, resistivity, kind, nothing };

const char* soil_word(SoilKnown known);

struct SoilSetting {
    SoilKnown known = SoilKnown::nothing;
    const char* from = "";  ///< where the figures come from, in words
    std::vector<field::Strata>
        worst;  ///< soils it may be, the likeliest first, at the end that resists more
    std::vector<field::Strata> best;  ///< … at the end that resists less
    bool whole_year = true;           ///< the range spans wet and dry; else it was read once
    bool read_dry = false;            ///< … in the dry season
    bool identified = false;          ///< by readings: the first soil tells the resistivities

    /// One layer, and no season to come over it: closed forms serve.
    bool plain() const { return whole_year && worst.size() == 1 && worst.front().layers.empty(); }
};

/// What pins and rods in the ground showed.
struct ReadSoil {
    std::optional<soil::SoilFit> fit;  ///< of the pins
    std::vector<field::Strata> soils;  ///< that the readings allow
    std::vector<std::string> says;     ///< what rods add, in sentences
};

/// The readings of the survey; none when it has no pins and no rods. `prior` is the range of
/// resistivity known otherwise, for rods without pins.
std::optional<ReadSoil> read_soil(const site::Ground& ground, const site::Fact<OhmMetres>& prior);

/// As the fit takes it.
soil::SpacingReading reading_of(const site::PinReading& pin);

/// Soil without layers.
field::Strata even_soil(OhmMetres resistivity);

/// The largest and the smallest resistivity of any layer: of the likeliest soil where readings
/// identified it, of all that it may be otherwise.
OhmMetres largest_in(const SoilSetting& soil);
OhmMetres smallest_in(const SoilSetting& soil);

SoilSetting settle_soil(Settler& settler, const tables::Catalogue& catalogue,
                        const site::Ground& ground);

/// These soils, read at the time of year that the survey names; asked for when it does not.
SoilSetting settle_season(Settler& settler, const site::Ground& ground,
                          const std::vector<field::Strata>& read);

}  // namespace toft::study
