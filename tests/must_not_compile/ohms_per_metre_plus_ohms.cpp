// must say: no match for 'operator+'
#include "base/units.h"

using namespace toft;

auto loop = milliohms_per_metre(1.83) + ohms(0.2);
