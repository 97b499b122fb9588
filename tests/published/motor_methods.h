#pragma once
// The methods of starting motors that published examples are held against.

#include "published/methods.h"

namespace toft::published {

/// Running and starting current of a motor of S on a supply of U line to line, or of P on one phase
/// of U0; `n` times the running current, or what its kind is taken to have.
Results motor_current(const support::PublishedCase& c);
/// Share of the voltage that one part of the way takes, at load and at a start, and the most that
/// the program reckons with. The part is given as R and X per unit of a base of S, or by what each
/// ampere-foot loses, in ten-thousandths, at two power factors.
Results motor_voltage(const support::PublishedCase& c);

}  // namespace toft::published
