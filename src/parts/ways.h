#pragma once
// The ways of an outbuilding's board: each circuit of the survey with the device and the cable the
// scheme gives it, what the survey states where it gives none, and what nobody knows yet.

#include "answer/answer.h"
#include "site/job.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::parts {

/// For a way that uses every line of the board.
inline constexpr int every_line = -1;

/// A circuit and what guards it. Points into the building and the scheme it was taken from.
struct Way {
    int number = 0;  ///< in the job's list, from 1; 0 for one that only the scheme names
    std::string name;
    const site::Circuit* facts = nullptr;           ///< null for one that only the scheme names
    const answer::CircuitAnswer* design = nullptr;  ///< null where it could not be designed
    /// As designed, else as stated; none: nobody chose one yet.
    std::optional<answer::DeviceAnswer> device = {};
    const answer::RcdAnswer* rcd = nullptr;  ///< null for none
    int phases = 1;
    int line = 0;  ///< of a board with three: 0 to 2, or `every_line`

    bool fused() const { return device && device->curve.empty() && device->kind != "RCBO"; }
    /// A fuse cannot open on residual current: the device that does stands beside it.
    bool residual_apart() const { return rcd && fused(); }
    /// One device opens on overcurrent and on residual current.
    bool residual_inside() const { return (rcd && !fused()) || (device && device->kind == "RCBO"); }
};

/// Each circuit of the building in its order, then any that only the scheme names ("every
/// circuit"). On a board of three lines a single-phase circuit is put on one by the rule that the
/// run's load is reckoned with (demand/lines.h).
std::vector<Way> ways_of(const site::Job& job, const site::Building& building,
                         const answer::SchemeAnswer& scheme);

/// True for what feeds the board instead of drawing from it, or does both.
bool gives(const Way& way);
/// True for what turns: a motor or a pump.
bool turns(const Way& way);

/// "20 A type B RCBO, 6 kA, BS EN 61009"; "not known: chosen with the circuit" where there is none.
std::string way_device_words(const Way& way);

/// "2.5 mm² flat twin and earth, earth core 1.5 mm²".
std::string circuit_cable_words(const answer::CircuitAnswer& circuit);

/// "on L2", "on L1, L2 and L3"; empty on a board of one line.
std::string line_words(const Way& way, int board_phases);

/// A figure of a circuit against its limit.
struct MatterWords {
    std::string word;    ///< "drop from the origin"
    std::string symbol;  ///< "Zs"; may be empty
    std::string value;   ///< "2.47 of 5 %"
    bool over = false;   ///< past the limit, which the rules take for a caution
};

/// The matters that arise for the circuit.
std::vector<MatterWords> matters_of(const answer::CircuitAnswer& circuit);

/// What of the way's design is to be heeded, each in a sentence.
std::vector<std::string> way_cautions(const Way& way);

}  // namespace toft::parts
