#pragma once
// What published figures about cables are compared with: the tables, read the way a run reads them.

#include "published/methods.h"

namespace toft::published {

/// `r`, `x`, `z` of the drop of a fully heated leg: line and neutral, or line to line.
Results tabulated_impedance(const support::PublishedCase& c);

/// Rating of a leg at the conditions it is tabulated for, named after its laying ("clipped"), and
/// the tabulated rating by its method ("C").
Results rating_of_leg(const support::PublishedCase& c);

/// `Ca` of a family at a temperature of the air.
Results ambient_factor(const support::PublishedCase& c);

/// `area` and `r` of the armour at 20 °C, and `share`, its conductance over that of a core.
Results armour_of_cable(const support::PublishedCase& c);

/// `cpc` of flat cable, `r1r2` at 20 °C, and `Zs` behind a length of it.
Results flat_cable(const support::PublishedCase& c);
/// Rating that three lines with a share of third harmonic ask for, and the cable that has it.
Results rating_with_harmonics(const support::PublishedCase& c);

}  // namespace toft::published
