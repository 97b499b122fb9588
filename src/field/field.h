#pragma once
// The field of bare electrodes of any shape made of thin straight wires, in uniform soil or in two
// layers: method of moments (Galerkin, even leakage along each piece) over Maxwell's images.
//
// Exact: superposition, reciprocity (the matrix is symmetric by construction and its terms agree
// both ways), and the images (1e-6). Approximate: wires are lines seen from one radius away,
// without end faces, and leak evenly along each piece. With pieces as `Cutting` proposes,
// resistances lie within 1 % of finite elements for rods, rings and stacks of rings
// (tests/elements/axial_test.cpp). No drying, no frost, no resistance of the metal itself. Page:
// docs/methods/field.md.

#include "field/ground.h"
#include "field/piece.h"

#include <vector>

namespace toft::field {

/// Current into each electrode, by its number.
using Currents = std::vector<Amperes>;

/// What one piece of wire gives to the soil.
struct Leakage {
    int wire = 0;
    Spot middle;
    Metres length{};
    Amperes current{};
};

class Field {
public:
    int electrodes() const { return electrodes_; }
    const std::vector<Piece>& pieces() const { return pieces_; }

    /// Volts on electrode `i` for one ampere into `j`, all others insulated. i = j: its resistance.
    Ohms resistance(int i, int j) const;

    /// All electrodes joined together.
    Ohms joined() const;

    /// How each electrode rises above far earth. `currents` holds one figure for each electrode.
    std::vector<Volts> rises(const Currents& currents) const;
    /// The leakage of all pieces; also where an electrode without current carries some through.
    std::vector<Leakage> leakage(const Currents& currents) const;
    /// The potential anywhere on or below the surface.
    Volts potential(const Spot& spot, const Currents& currents) const;

private:
    friend Outcome<Field> solve_field(const LayeredSoil& soil, const std::vector<Wire>& wires,
                                      const Cutting& cutting);
    Field(const LayeredSoil& soil, std::vector<Piece> pieces);

    /// Amperes out of every piece.
    std::vector<double> amperes_of(const Currents& currents) const;

    Ground ground_;
    std::vector<Piece> pieces_;
    int electrodes_ = 0;
    std::vector<double> shares_;      ///< piece by electrode: amperes per volt on that electrode
    std::vector<double> resistance_;  ///< electrode by electrode
};

/// Solves for all electrodes at once. Refuses what cut() refuses, and soil without resistivity,
/// thickness or with layers more than 10 000 times apart.
Outcome<Field> solve_field(const LayeredSoil& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting = {});

}  // namespace toft::field
