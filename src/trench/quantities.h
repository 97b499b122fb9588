#pragma once
// What a trench comes to: soil, sand, tape, duct, surface. Page: docs/methods/trench.md.

#include "trench/section.h"

#include <vector>

namespace toft::trench {

struct DuctLength {
    Metres outer;
    Metres length;
    Metres to_buy;

    friend bool operator==(const DuctLength&, const DuctLength&) = default;
};

struct Quantities {
    Metres length;          ///< dug
    CubicMetres dug;        ///< in the ground
    CubicMetres spoil;      ///< as it lies beside the trench
    CubicMetres left_over;  ///< of the spoil, once the trench is filled again
    CubicMetres sand;       ///< in the trench
    CubicMetres sand_to_buy;
    double sand_kg = 0;  ///< to buy
    Metres tape, tape_to_buy;
    std::vector<DuctLength> ducts;  ///< by rising diameter
    SquareMetres surface;           ///< to make good
};

/// Of a trench of that length throughout.
Quantities quantities_of(const tables::TrenchSizes& sizes, const Section& section,
                         const std::vector<Lying>& lying, Metres length);

/// Both together.
Quantities sum(const Quantities& a, const Quantities& b);

/// Bags that hold so much, none when there is nothing to hold.
int bags(double kg, double kg_a_bag);

}  // namespace toft::trench
