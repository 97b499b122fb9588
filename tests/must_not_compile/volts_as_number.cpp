// must say: cannot convert
#include "base/units.h"

using namespace toft;

double u = volts(230);
