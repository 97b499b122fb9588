// must say: no match for 'operator+'
#include "base/units.h"

using namespace toft;

auto price = pounds(120) + pounds_per_metre(4);
