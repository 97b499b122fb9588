// must say: no match for 'operator*'
#include "base/temperature.h"

using namespace toft;

auto twice = celsius(20) * 2.0;
