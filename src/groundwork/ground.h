#pragma once
// What the ground of the place does: the soil that the survey allows, what an electrode will read
// through the year and how deep it must go, how far it is from the house's earth, and what metal
// does when the supply loses its neutral. Information for judgement; none of it says "safe".
// Figures are in the unit their name ends with; low and high are the ends of what the survey
// leaves open.

#include "answer/answer.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::answer {

/// One four-pin reading beside what the soil found would have given.
struct SoilReadingAnswer {
    std::string array;     ///< Wenner or Schlumberger
    double spacing_m = 0;  ///< between pins; half the current pins' distance for Schlumberger
    double apparent_ohm_m = 0;
    double fitted_ohm_m = 0;
    double off_percent = 0;  ///< reading over fit
    bool odd = false;        ///< leaving it out would change the soil found
};

struct StratumAnswer {
    double low_ohm_m = 0, best_ohm_m = 0, high_ohm_m = 0;
    std::optional<double> low_m, best_m, high_m;  ///< thickness; none for the deepest
};

struct SoilAnswer {
    std::string known_by;  ///< readings, stated layers, stated resistivity, kind of soil, nothing
    std::string verdict;   ///< of readings: uniform, two layers, three layers, not identifiable
    std::string says;
    std::vector<StratumAnswer> strata;  ///< from the surface down
    double misfit_percent = 0;          ///< root mean square over the readings
    std::vector<SoilReadingAnswer> readings;
};

/// An electrode through the year.
struct YearAnswer {
    double low_ohm = 0;
    double high_ohm = 0;
    std::string low_when, high_when;
};

struct RodPointAnswer {
    double length_m = 0;
    double low_ohm = 0;   ///< as the soil was surveyed, its best end
    double high_ohm = 0;  ///< driest or frozen, its worst end
};

/// Rods that meet a target at the worst time of the year.
struct RodChoiceAnswer {
    int rods = 1;
    double length_m = 0;
    double spacing_m = 0;  ///< 0 for one rod
    double high_ohm = 0;
    double price = 0;  ///< of rods, joints and driving, without VAT
};

struct RodTargetAnswer {
    double target_ohm = 0;
    std::string why;
    std::vector<RodChoiceAnswer> choices;  ///< cheapest first; empty when none within bounds
    std::string says;
};

/// Something on the house's earth, or that joins the two earths, and how near it comes.
struct BridgeAnswer {
    std::string what;
    std::string says;
    bool joins = false;  ///< metal runs on between the two earths
    std::optional<double> distance_m;
};

struct SeparationAnswer {
    double distance_m = 0;      ///< from the electrode to the house's earth, the least it may be
    double house_radius_m = 0;  ///< of the half ball in that soil that would have its resistance
    double transferred_low = 0, transferred_high = 0;  ///< of the house earth's rise
    double allowed = 0;   ///< transferred fraction that keeps to the touch voltage
    double needed_m = 0;  ///< distance for that
    double lift_v = 0;    ///< of the ground at the electrode, the neutral lost, at most
    bool island = false;  ///< nothing joins and nothing is within reach, as far as is known
    std::vector<BridgeAnswer> bridges;
};

struct BodyAnswer {
    std::string condition;
    double low_ma = 0, high_ma = 0;  ///< at low_v and high_v, of the condition's person
};

struct LostNeutralPointAnswer {
    double load_w = 0;
    double low_v = 0, high_v = 0;
};

/// Metal of the outbuilding against the ground it stands on, supply's neutral lost, load on.
struct LostNeutralWayAnswer {
    std::string way;  ///< carry the supply earth, carry it and add an electrode, own electrode
    double low_v = 0, high_v = 0;
    double stiff_v = 0;  ///< at most, were every load to keep its power as its voltage falls
    double electrode_low_a = 0, electrode_high_a = 0;  ///< through the outbuilding's own electrode
    double warmer_k = 0;  ///< of the soil at that electrode after hours, at most
    bool dries = false;   ///< it would dry the soil, so that its resistance climbs
    std::vector<BodyAnswer> body;
    std::vector<LostNeutralPointAnswer> over_load;
    std::string says;
};

struct LostNeutralAnswer {
    bool applies = false;  ///< the supply has a combined neutral and earth
    double load_w = 0;     ///< on the house and the outbuilding together
    int phases = 1;
    double earth_low_ohm = 0, earth_high_ohm = 0;  ///< of all that the house's terminal joins
    std::string earth_known_by;
    std::vector<double> marks_v;  ///< 25, 50, 70: shown beside, limits of other duties
    std::vector<LostNeutralWayAnswer> ways;
};

/// What the ground does for one outbuilding.
struct GroundSideAnswer {
    std::string building;
    std::string electrode_words;  ///< "one rod, 2.4 m"
    YearAnswer year;
    std::optional<double> read_ohm, read_error_ohm;  ///< by fall of potential
    std::string read_says;
    std::vector<RodPointAnswer> over_length;
    std::vector<RodTargetAnswer> targets;
    SeparationAnswer separation;
    LostNeutralAnswer lost_neutral;
};

struct GroundAnswer {
    std::string job;
    SoilAnswer soil;
    std::vector<GroundSideAnswer> sides;  ///< one for each run's outbuilding
    std::vector<UnknownAnswer> asked;     ///< facts of the ground that were read from a range
    std::vector<std::string> cautions;
};

/// The ground of a (valid) job.
GroundAnswer ground(const Question& question);

}  // namespace toft::answer
