// must say: no match for 'operator+'
#include "base/temperature.h"

using namespace toft;

auto sum = celsius(20) + celsius(30);
