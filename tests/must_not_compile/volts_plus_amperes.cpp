// must say: no match for 'operator+'
#include "base/units.h"

using namespace toft;

auto sum = volts(230) + amperes(13);
