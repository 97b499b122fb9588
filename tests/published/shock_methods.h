#pragma once
// The methods of bodies, hot electrodes and lost neutrals that published examples are held against.

#include "published/methods.h"

namespace toft::published {

/// Impedances of a body at a voltage across it, and currents for the case's skin and path.
Results body(const support::PublishedCase& c);
/// Current density and current that a rod may carry for a short time, with the constant of the
/// case where it gives one.
Results electrode_heat(const support::PublishedCase& c);
/// The electrode that holds a limit, what three lines leave for the neutral, what a path carries.
Results lost_neutral(const support::PublishedCase& c);
/// Touch voltage of an own electrode.
Results touch_voltage(const support::PublishedCase& c);

}  // namespace toft::published
