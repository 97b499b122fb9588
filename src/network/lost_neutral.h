#pragma once
// A supply whose neutral has parted on the source's side of an installation, and everything joined
// to its earthing terminal. The loads can no longer send their current back along the neutral; it
// leaves the terminal by every path to earth there is, and lifts the terminal, and all metal joined
// to it, to
//
//   V = sum(Y_i E_i) / (sum(Y_i) + sum(1/R_j))          against true ground (Millman)
//
// with E_i the voltage of a load's line and Y_i its admittance. A constant-power load draws
// conj(S/(E − V)), solved by damped Newton along the branch that begins at no load; past the
// largest power that the earth can carry there is no steady state, and none is made up.
//
// Left out: line and source impedance and the source's own earth resistance (all of which lower V).
// No fuse, breaker or residual current device acts on this fault. Page:
// docs/methods/lost-neutral.md.

#include "base/outcome.h"
#include "base/units.h"

#include <complex>
#include <cstddef>
#include <string>
#include <vector>

namespace toft::network {

/// Voltage of a line to the source's neutral, r.m.s.; a voltage factor is the caller's.
struct LineSource {
    Volts u{};
    double degrees = 0;  ///< ahead of the first line
};

enum class LoadKind { constant_impedance, constant_power };

/// What is switched on between one line and the floating neutral.
struct FloatingLoad {
    LoadKind kind = LoadKind::constant_impedance;
    Watts power{};            ///< at the nominal voltage; 0 or more
    double power_factor = 1;  ///< above 0, at most 1
    bool leading = false;
    std::size_t line = 0;  ///< place in `lines`
};

/// One way from the earthing terminal to the ground: an electrode, a pipe, a neighbour's earth.
struct EarthPath {
    std::string name;
    Ohms resistance{};  ///< above 0
};

struct LostNeutral {
    Volts nominal = volts(230);  ///< at which the loads have their power
    std::vector<LineSource> lines;
    std::vector<FloatingLoad> loads;
    std::vector<EarthPath> paths;  ///< none: nothing joins the terminal to the ground
};

enum class FloatingState {
    steady,    ///< the figures are the circuit's
    collapsed  ///< no steady state: see `bound`
};

struct FloatingTerminal {
    FloatingState state = FloatingState::steady;
    std::complex<double> terminal;  ///< volts against true ground, the first line at 0 degrees
    Volts magnitude{};
    std::vector<Volts> left;  ///< between each line and the floating neutral
    Amperes earth{};          ///< through all paths together
    std::vector<Amperes> paths;
    /// No steady state of loads of these power factors has more on the terminal. When collapsed it
    /// is all that is known: the loads drop out, restart or fail, and the terminal goes with them.
    Volts bound{};
};

/// One line at 0 degrees.
std::vector<LineSource> single_phase(Volts u);
/// Three lines, each a third of a turn behind the one before.
std::vector<LineSource> three_phase(Volts u);

/// The steady state, or all that is wrong with the circuit. When collapsed, voltages and currents
/// are not filled in.
Outcome<FloatingTerminal> lost_neutral(const LostNeutral& circuit);

}  // namespace toft::network
