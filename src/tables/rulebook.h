#pragma once
// The figures of the rules: limits, sizes by table, ranges used for facts nobody knows.

#include "base/citation.h"
#include "base/units.h"

#include <string>
#include <vector>

namespace toft::tables {

/// Single limits, each with its clause.
struct Limits {
    Cited<Volts> u0;
    Cited<double> c_min;
    Cited<double> c_max;
    Cited<Seconds> disconnection_tn;
    Cited<Seconds> disconnection_tt;
    Cited<double> drop_run;       ///< per cent
    Cited<double> drop_lighting;  ///< per cent, origin to lamp
    Cited<double> drop_other;     ///< per cent, origin to any other load
    Cited<Volts> touch_voltage;
    Cited<Ohms> electrode_stable;
    Cited<Amperes> residual_socket;
    Cited<Amperes> socket_most;  ///< rating up to which the clauses about sockets reach
    Cited<double> residual_ratio;
    Cited<double> residual_leakage;  ///< standing leakage over the rating of what sees it
    Cited<Metres> surge_reach;       ///< cable that one surge protective device serves
    Cited<Volts> charging_low;   ///< supply outside this band: a charging point that watches …
    Cited<Volts> charging_high;  ///< … it takes the vehicle off
    Cited<double> overload_i2;
    Cited<double> buried_cc;
    Cited<double> test_factor;
    Cited<double> loss_share;  ///< of the load factor in the loss factor; the rest is of
                               ///< its square
    Cited<Metres> reach;
    Cited<Ohms> extraneous;
    Cited<Ohms> declared_ze_tncs;
    Cited<Ohms> declared_ze_tns;
    Cited<Ohms> declared_tt_source;
    Cited<Amperes> declared_pscc;
    Cited<Amperes> assembly_conditional;  ///< domestic board behind a service fuse …
    Cited<Amperes> assembly_fuse;         ///< … of at most this rating
    Cited<double> bond_half;
    Cited<SquareMillimetres> bond_min;
    Cited<SquareMillimetres> bond_max;
    Cited<SquareMillimetres> separate_min_protected;
    Cited<SquareMillimetres> separate_min;
    Cited<SquareMillimetres> separate_buried;
    Cited<Seconds> fault_longest;
    Cited<Metres> rod_length;  ///< of the rod proposed where none is stated
    Cited<Metres> rod_diameter;
    Cited<Metres> rod_section;                ///< rods are sold and coupled in
    Cited<Metres> rod_deepest;                ///< proposed
    Cited<double> rod_most;                   ///< proposed side by side
    Cited<SquareMillimetres> parallel_least;  ///< smallest cable offered in pairs
    Cited<Ohms> insulation_least;             ///< resistance between conductors of a circuit
    Cited<Ohms> ring_equal;                   ///< ends of a ring may differ by so much
    Cited<Ohms> insulation_look;              ///< below it a fault may be on its way
    Cited<double> reading_most;               ///< of a conductor over what its length gives
    Cited<double> unequal_most;  ///< difference of currents side by side over the design's
    Cited<double> line_share;    ///< a line's part of the line-neutral loop of three phases
    Cited<Metres> tails_longest;
    Cited<Metres> bond_run;               ///< bonding conductor to one part of the metalwork
    Cited<SquareMillimetres> bond_least;  ///< that is fitted, whatever would be allowed
    Cited<Amperes> body_current;          ///< that a person may take without harm for long
    Cited<Ohms> body_resistance;
    Cited<Metres> insert_length;  ///< insulating section of a metal pipe
    Cited<Amperes> ring_cable;    ///< least rating of the cable of a ring
    Cited<SquareMillimetres> ring_section;
    Cited<Amperes> ring_point;  ///< load at the far point of a ring, the rest being spread
    Cited<Seconds> disconnection_final;
    Cited<Amperes> final_sockets;      ///< largest circuit that time goes for, with sockets …
    Cited<Amperes> final_others;       ///< … and without
    Cited<double> start_dip;           ///< per cent
    Cited<Seconds> start_moment;       ///< a device that holds as long holds a start
    Cited<double> source_rise;         ///< per cent
    Cited<Amperes> notice_demand;      ///< a charge point or heat pump above it: ask first
    Cited<Amperes> notice_generation;  ///< of one phase; above it: ask first
    Cited<double> notice_days;         ///< within which what need not be asked is told
};

/// A row of the main bonding table for combined supplies: neutrals over `over` and up to `to`.
struct BondingStep {
    SquareMillimetres over;
    SquareMillimetres to;
    Cited<SquareMillimetres> bond;
};

/// How deep a cable should lie under a surface, or how high it should hang over it.
struct DepthAdvice {
    std::string surface;
    Cited<Metres> depth;
};
struct HeightAdvice {
    std::string surface;
    Cited<Metres> height;
};

/// How much the protective path can be trusted: a rank, higher is better.
struct Dependability {
    std::string earthing;
    std::string protective;
    Cited<double> rank;
};

/// What is usual of a kind of final circuit.
struct CircuitKindRow {
    std::string kind;      ///< as the job words it
    Amperes least_device;  ///< smallest rating that is fitted
    SquareMillimetres least;
    double start = 1;  ///< starting current over running current
    const Citation* citation = nullptr;
};

/// The range used for a fact that the survey leaves open.
struct OpenRange {
    std::string fact;
    Cited<double> low;
    Cited<double> high;
    std::string unit;
};

/// Whose word a step of the earthing decision is, the weightiest first.
enum class Authority { law, standard, operators_condition, guidance, habit };

const char* authority_word(Authority authority);

/// What a step of the earthing decision stands on.
struct EarthingBasis {
    std::string key;  ///< of the step
    Authority authority = Authority::habit;
    std::string clause;  ///< "no clause" where there is none
    const Citation* citation = nullptr;
};

struct Soil {
    std::string word;
    Cited<OhmMetres> low;
    Cited<OhmMetres> high;
};

}  // namespace toft::tables
