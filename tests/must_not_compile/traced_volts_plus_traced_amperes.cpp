// must say: no match for 'operator+'
#include "base/ledger.h"

using namespace toft;

auto sum = Traced<Volts>{} + Traced<Amperes>{};
