// What the refused files come near to, done rightly.
#include "base/impedance.h"
#include "base/ledger.h"

using namespace toft;

static_assert(volts(230) / ohms(2) == amperes(115));
static_assert(ohms_per_metre(2) * metres(50) + ohms(20) == ohms(120));
static_assert(celsius(20) + kelvins(50) == celsius(70));
static_assert(celsius(70) - celsius(20) == kelvins(50));
static_assert(apparent(Watts{2400}, 0.8) == VoltAmperes(3000));
static_assert(pounds_per_metre(4) * metres(30) + pounds(120) == pounds(240));

Ohms length_of(const Impedance& z) { return magnitude(z); }
