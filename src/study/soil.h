#pragma once
// The soil as the study takes it: what the survey knows best of readings, layers, a resistivity or
// the kind of ground, at the end of its range that a corner asks for. Page:
// docs/methods/soil.md.

#include "field/soil.h"
#include "study/settle.h"

namespace toft::study {

enum class SoilKnown { readings, layers, resistivity, kind, nothing };

const char* soil_word(SoilKnown known);

struct SoilSetting {
    SoilKnown known = SoilKnown::nothing;
    const char* from = "";             ///< where the figures come from, in words
    std::vector<field::Strata> worst;  ///< soils it may be, each, at the end that resists more
    std::vector<field::Strata> best;   ///< … at the end that resists less
    bool whole_year = true;            ///< the range spans wet and dry; else it was read once
    bool read_dry = false;             ///< … in the dry season

    /// One layer, and no season to come over it: closed forms serve.
    bool plain() const { return whole_year && worst.size() == 1 && worst.front().layers.empty(); }
};

/// Soil without layers.
field::Strata even_soil(OhmMetres resistivity);

/// The largest and the smallest resistivity in any of the soils.
OhmMetres largest_in(const std::vector<field::Strata>& soils);
OhmMetres smallest_in(const std::vector<field::Strata>& soils);

SoilSetting settle_soil(Settler& settler, const tables::Catalogue& catalogue,
                        const site::Ground& ground);

/// These soils, read at the time of year that the survey names; asked for when it does not.
SoilSetting settle_season(Settler& settler, const site::Ground& ground,
                          const std::vector<field::Strata>& read);

}  // namespace toft::study
