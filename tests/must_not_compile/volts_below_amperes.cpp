// must say: no match for 'operator<'
#include "base/units.h"

using namespace toft;

bool less = volts(230) < amperes(13);
