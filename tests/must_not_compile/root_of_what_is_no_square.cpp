// must say: only a square has a root
#include "base/units.h"

using namespace toft;

auto r = root(heat_constant(143) * square_millimetres(4));
