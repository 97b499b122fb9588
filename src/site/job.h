#pragma once
// A job as the user states it: the supply, the ground, the buildings, the runs between them, the
// wishes. Nothing here is calculated and nothing missing is filled in.

#include "base/temperature.h"
#include "base/units.h"
#include "site/device.h"
#include "site/electrode.h"
#include "site/existing.h"
#include "site/fact.h"
#include "site/ground.h"
#include "site/words.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::site {

/// A board is not stated to have more.
inline constexpr double most_spare_ways = 40;

struct HouseBoard {
    Fact<double> spare_ways;   ///< 0 to 40
    Fact<Amperes> max_device;  ///< largest device a way of the board may take
    Fact<Amperes> behind_rcd;  ///< sensitivity of the RCD in front of the ways; 0 for none
    std::string takes;         ///< standard of the devices its ways take; empty for modern breakers
    Answer rcd_delayed = Answer::unknown;
    std::optional<RcdType> rcd_type;
    Fact<Amperes> breaking;  ///< rated short-circuit capacity of the board and its devices

    friend bool operator==(const HouseBoard&, const HouseBoard&) = default;
};

struct Intake {
    int phases = 1;
    Volts u0{230};
    Earthing earthing = Earthing::tn_c_s;
    Fact<Ohms> ze;           ///< external earth fault loop, measured or otherwise
    Fact<Ohms> ze_declared;  ///< the operator's declared maximum
    Fact<Ohms> line_neutral_loop;
    Fact<Amperes> pscc;  ///< at the origin: line to neutral, or three lines together
    Fact<Amperes> pefc;  ///< line to earth, at the origin
    std::optional<NamedDevice> service_fuse;
    Answer looped = Answer::unknown;
    Fact<SquareMillimetres> supply_neutral;  ///< the operator's, not the tails
    Fact<SquareMillimetres> tails;
    Fact<Metres> tails_length;
    Fact<SquareMillimetres> earthing_conductor;
    Fact<SquareMillimetres> main_bonding;  ///< at the house; 0 for none
    Fact<Ohms> electrode;                  ///< the house's own, for TT
    Fact<Ohms> earth_without_neutral;      ///< of all that its earthing terminal joins, when the
                                           ///< supply has lost its neutral
    HouseBoard board;
    Answer isolator = Answer::unknown;  ///< a switch between meter and board that the electrician
                                        ///< may open
    Fact<Amperes> main_switch;          ///< rating of the board's main switch
    Fact<Amperes> agreed;               ///< demand the operator has agreed to
    Fact<Amperes> demand;               ///< the house's largest today, measured or otherwise

    friend bool operator==(const Intake&, const Intake&) = default;
};

struct Metalwork {
    Metal what = Metal::other;
    std::string material;
    ComesFrom comes_from = ComesFrom::ground;
    Answer insulating_section = Answer::unknown;
    Answer bonded_at_house = Answer::unknown;
    Fact<Ohms> resistance_to_met;  ///< measured from the part to the main earthing terminal
    Fact<Metres> distance;         ///< from the building, for what does not enter it

    friend bool operator==(const Metalwork&, const Metalwork&) = default;
};

/// The cable a circuit has or is to have.
struct CircuitCable {
    std::string family;
    SquareMillimetres live;
    std::optional<SquareMillimetres> cpc;  ///< none: as the family is made

    friend bool operator==(const CircuitCable&, const CircuitCable&) = default;
};

/// What a circuit carries comes on top of its kind where it is stated.
struct Circuit {
    std::string name;
    int phases = 1;
    CircuitKind kind = CircuitKind::fixed_load;
    Fact<double> load_w;
    Fact<double> power_factor;
    Fact<Metres> length;  ///< to its last point; of a ring, round the ring where no loop is said
    Fact<Metres> loop_length;  ///< round a ring, from the board back to it
    std::optional<NamedDevice> device;
    std::optional<CircuitCable> cable;
    std::optional<LegMethod> method;  ///< how its cable lies; none: clipped
    Answer continuous = Answer::unknown;
    Fact<double> starting_multiple;  ///< starting current over running current
    Fact<double> starts_per_hour;
    Fact<double> duty_percent;                ///< share of ten minutes that a welder is at work
    Answer drive = Answer::unknown;           ///< fed through a variable-speed drive or inverter
    Fact<Amperes> leakage;                    ///< standing current in the protective conductor
    Fact<double> third_harmonic;              ///< per cent of the line current
    Answer later = Answer::unknown;           ///< not there today
    std::optional<KeepsSupply> keeps_supply;  ///< solar and batteries: when the mains fails

    friend bool operator==(const Circuit&, const Circuit&) = default;
};

struct Building {
    std::string id;
    std::string name;
    bool origin = false;  ///< the building with the intake
    std::optional<Use> use;
    std::optional<Construction> construction;
    Answer stands_in_ground = Answer::unknown;
    std::optional<double> at_x_m;  ///< plan position from the house
    std::optional<double> at_y_m;
    bool metalwork_surveyed = false;  ///< the list was stated, even if empty
    std::vector<Metalwork> metalwork;
    Fact<Metres> reach_of_house_earth;  ///< nearest thing on the house's earth
    Electrode electrode;
    std::vector<Circuit> circuits;
    Fact<double> spare_ways;
    Fact<Amperes> future_load;
    Fact<Amperes> load;
    Fact<double> energy_kwh_year;  ///< that it uses in a year
    Fact<double> load_w;
    Fact<double> power_factor;
    Answer livestock = Answer::unknown;
    Answer wet_floor = Answer::unknown;
    Answer barefoot = Answer::unknown;
    Answer vehicle_outdoors = Answer::unknown;
    Answer spread_of_fire_risk = Answer::unknown;
    std::vector<std::string> found;  ///< wrong with what is there, in the words of the tables

    friend bool operator==(const Building&, const Building&) = default;
};

struct Leg {
    LegMethod method = LegMethod::clipped;
    Fact<Metres> length;
    Fact<Celsius> ambient;  ///< of the air, for legs not in the ground
    Fact<double> other_loaded_circuits;
    Fact<Metres> depth;
    std::optional<Surface> surface;
    Fact<Metres> insulation_length;      ///< of the leg that is inside thermal insulation
    Answer indoors = Answer::unknown;    ///< under a roof, out of sun and wet
    Answer concealed = Answer::unknown;  ///< in a wall or partition, less than 50 mm deep
    Fact<Metres> height;                 ///< of an overhead leg over what it crosses
    std::string family;                  ///< of its cable; empty when open
    std::optional<int> cores;
    std::optional<SquareMillimetres> live;
    std::string trench;   ///< name of the one it shares with other runs; empty for one of its own
    std::string dug_for;  ///< as built: id of the run that this trench is dug for; empty: this one

    friend bool operator==(const Leg&, const Leg&) = default;
};

/// Where several lead to one building, one of them is built.
struct Run {
    std::string id;
    std::string from;
    std::string to;
    std::vector<Leg> legs;
    std::optional<FedFrom> fed_from;
    std::optional<int> phases;          ///< taken to the building: 1 or 3
    std::optional<NamedDevice> device;  ///< at its head; curve may be open
    std::vector<AlsoCarried> also_carries;
    std::optional<Existing> existing;      ///< the cable that lies there
    std::vector<std::string> found;        ///< wrong with it, in the words of the tables
    std::optional<std::size_t> stated_at;  ///< as built: place in the job as stated

    friend bool operator==(const Run&, const Run&) = default;
};

struct Wishes {
    Fact<double> drop_run;  ///< per cent
    Fact<double> drop_lighting;
    Fact<double> drop_other;
    std::vector<std::string> offer;  ///< cable families; empty for all
    Fact<SquareMillimetres> smallest_core;
    std::vector<std::string> devices;  ///< standards of the devices offered; empty for all
    Prefer prefer = Prefer::price;
    std::optional<Scenario> scenario;  ///< load the run is sized for; none: likely
    Fact<double> start_dip;            ///< per cent that a starting motor may take off the voltage

    friend bool operator==(const Wishes&, const Wishes&) = default;
};

struct Job {
    std::string title;
    std::string rulebook = "uk";
    Intake intake;
    Ground ground;
    std::vector<Building> buildings;
    std::vector<Run> runs;
    Wishes wishes;
    std::vector<std::string>
        unused;  ///< what was stated but no calculation reads yet, in sentences

    friend bool operator==(const Job&, const Job&) = default;
};

/// The building of that id, or null.
const Building* find_building(const Job& job, const std::string& id);

/// Ways of the board it starts at that the cable of that run takes already.
int ways_in_use(const Run& run);

/// Place of the building in the job's list; the id must exist.
std::size_t building_index(const Job& job, const std::string& id);

}  // namespace toft::site
