#pragma once
#include "field/field.h"
namespace toft::field {
Strata with_crust(const Strata& soil, Metres depth, double factor);
Outcome<Field> solve_field(const Strata& soil, const std::vector<Wire>& wires, const Cutting& cutting = {});
}
