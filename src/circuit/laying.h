#pragma once
// What the tables call the ways to lay a cable that a survey names, for runs and circuits alike.

#include "site/words.h"
#include "tables/cable.h"

namespace toft::circuit {

tables::Laying laying_of(site::LegMethod method);

}  // namespace toft::circuit
