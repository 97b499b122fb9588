#pragma once
// Two earths in one ground: how much of the rise of one reaches the other, what the two are worth
// joined, and how far apart they must be. Page: docs/methods/transferred-potential.md.

#include "field/field.h"

namespace toft::field {

/// Electrodes `a` and `b` of a field, all others insulated.
struct TwoEarths {
    Ohms of_a{};
    Ohms of_b{};
    Ohms mutual{};
    double onto_b = 0;  ///< volts on the insulated b for each volt on a: mutual / of_a
    double onto_a = 0;  ///< volts on the insulated a for each volt on b: mutual / of_b
    Ohms joined{};      ///< a and b as one, by a conductor without resistance
};

TwoEarths two_earths(const Field& field, int a = 0, int b = 1);

/// What a conductor between the two does; 0 ohms joins them.
struct Bridged {
    Ohms from_a{};       ///< current into a meets this
    double onto_b = 0;   ///< volts on b for each volt on a
    double through = 0;  ///< share of the current into a that leaves by b
};

Bridged bridged(const TwoEarths& earths, Ohms bridge);

/// How electrode 1 may be moved: from where its wires are, along a direction over the surface.
struct Move {
    double east = 1;
    double north = 0;  ///< the direction need not have length 1
    Metres farthest{};
};

struct Apart {
    Metres moved{};
    TwoEarths earths;
};

struct Separation {
    bool reached = false;
    Apart at;  ///< the nearest place from which on k stays wanted; if not reached, the farthest
};

/// Looks for how far electrode 1 must be moved so that no more than `wanted` (0 to 1) of the rise
/// of electrode 0 reaches it: inwards from the farthest place, each step a fifth nearer, then
/// halving to 1 mm. Places where wires lie in each other count as not apart. Refuses what
/// solve_field() refuses at the farthest place, other electrodes than 0 and 1, and moves that go
/// nowhere.
Outcome<Separation> separate(const Medium& medium, const std::vector<Wire>& wires, const Move& move,
                             double wanted);

}  // namespace toft::field
