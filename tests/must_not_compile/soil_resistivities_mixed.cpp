// must say: no matching function for call to
#include "base/units.h"

using namespace toft;

OhmMetres rho{SoilThermalResistivity{2.5}};
