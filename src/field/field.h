#pragma once
// The field of bare electrodes of any shape made of thin straight wires, in uniform soil or in any
// number of layers: method of moments (Galerkin, even leakage along each piece) over images.
//
// Exact: superposition, reciprocity (the matrix is symmetric by construction and its terms agree
// both ways), and the images (1e-6 of the potential in two layers; in more as Medium::error()
// says). Approximate: wires are lines seen from one radius away, without end faces, and leak evenly
// along each piece. With pieces as `Cutting` proposes, resistances lie within 1 % of finite
// elements for rods, rings and stacks of rings in one to four layers (tests/elements). No drying,
// no resistance of the metal itself; frost and dry crusts are layers: season.h. Page:
// docs/methods/field.md.

#include "field/medium.h"
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

/// A field with its currents fixed: potentials at many places for little.
class Driven {
public:
    /// The potential anywhere on or below the surface.
    Volts potential(const Spot& spot) const;
    /// How each electrode rises above far earth.
    const std::vector<Volts>& rises() const { return rises_; }

private:
    friend class Field;
    struct Source {
        Bar bar;
        double amperes = 0;
    };
    Driven(Medium medium, std::vector<Volts> rises);

    Medium medium_;
    std::vector<Volts> rises_;
    std::vector<Source> sources_;
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
    /// The potential anywhere on or below the surface; for many places see driven().
    Volts potential(const Spot& spot, const Currents& currents) const;
    /// The field with these currents; stands on its own.
    Driven driven(const Currents& currents) const;

private:
    friend Outcome<Field> solve_field(const Medium& medium, const std::vector<Wire>& wires,
                                      const Cutting& cutting);
    Field(const Medium& medium, std::vector<Piece> pieces);

    /// Amperes out of every piece.
    std::vector<double> amperes_of(const Currents& currents) const;

    Medium medium_;
    std::vector<Piece> pieces_;
    int electrodes_ = 0;
    std::vector<double> shares_;      ///< piece by electrode: amperes per volt on that electrode
    std::vector<double> resistance_;  ///< electrode by electrode
};

/// Solves for all electrodes at once. Refuses what cut() refuses, soil that faults_of() complains
/// of, electrodes that touch (contact.h) and wires that lie in each other. Several fields in one
/// soil share its medium.
Outcome<Field> solve_field(const Medium& medium, const std::vector<Wire>& wires,
                           const Cutting& cutting = {});
Outcome<Field> solve_field(const LayeredSoil& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting = {});
Outcome<Field> solve_field(const Strata& soil, const std::vector<Wire>& wires,
                           const Cutting& cutting = {});

}  // namespace toft::field
