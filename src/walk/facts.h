#pragma once
// What the walk looks at: the survey, and of the prepared setting the figures that decide. Plain
// values and pointers, so that a step may be decided in the search without allocation.

#include "study/setting.h"
#include "walk/choice.h"

namespace toft::walk {

/// Pointers stay good as long as the setting they were taken from.
struct Facts {
    const site::Job* job = nullptr;
    const site::Building* building = nullptr;
    const tables::Catalogue* catalogue = nullptr;
    const std::vector<study::MetalPart>* parts = nullptr;
    site::Earthing system = site::Earthing::tn_c_s;
    bool extraneous = false;           ///< some part brings in a potential from outside
    bool bridged = false;              ///< some part joins the house's earth to the building's
    Metres reach_least;                ///< to the nearest thing on the house's earth
    Ohms ra_most;                      ///< own electrode
    Ohms house_ra_most;                ///< the house's electrode (TT)
    Amperes ib;                        ///< design current of the run
    SquareMillimetres bonding_least;   ///< main bonding at the house
    SquareMillimetres earthing_least;  ///< earthing conductor of the house
    /// Main bonding the supply asks for; the walk alone fills it in, no rule reads it here.
    SquareMillimetres bond_asked{};

    const site::Use* use() const { return building->use ? &*building->use : nullptr; }
    bool used_as(site::Use a) const { return building->use == a; }
    bool on_tn() const { return system != site::Earthing::tt; }
};

template <class L>
Facts facts_of(const study::Setting<L>& setting);

/// The same with what the supply asks for as main bonding.
Facts all_facts_of(const study::Setting<Silent>& setting);

/// A yes or no of the survey, together with what the building's use says of it by itself.
Known known_of(bool by_use, const Facts& facts, std::initializer_list<site::Answer> answers);

/// True when the use or one of the answers says yes.
bool says_yes(bool by_use, std::initializer_list<site::Answer> answers);

/// How a figure of the survey is known; unknown when it was left out.
template <class Q>
Known known_of(const site::Fact<Q>& fact) {
    if (!fact.known) return Known::unknown;
    if (fact.standing == site::Standing::measured) return Known::measured;
    return fact.standing == site::Standing::declared ? Known::stated : Known::assumed;
}

/// A circuit of that kind is to be there.
bool has_circuit(const Facts& facts, site::CircuitKind kind);

/// Current that would seek the building's metal if the supply lost its neutral: the run's and the
/// house's demand; where the demand is not known, the operator's fuse or, unread, the largest.
Amperes current_seeking_earth(const Facts& facts);

/// Largest electrode that holds metal to `limit` with that current flowing back through it:
/// limit U0 / (I (c.max U0 - limit)).
Ohms electrode_holding(const Facts& facts, Volts limit);

/// Volts on the metal when that current returns through `electrode`: c.max U0 R / (R + U0 / I).
Volts volts_without_neutral(const Facts& facts, Ohms electrode);

}  // namespace toft::walk
