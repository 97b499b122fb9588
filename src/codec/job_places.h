#pragma once
// Where things stand on the plan of a job. Whoever draws the place needs it; nothing is computed
// from it, for lengths and distances are stated beside. Private to codec.

#include "codec/reader.h"

#include <optional>

namespace toft::codec {

/// A place on the plan: metres east and north of the house.
struct Place {
    double east;
    double north;
};

/// [east, north], each from -2000 to 2000 m; nothing when left out, a fault when it is not that.
std::optional<Place> read_place_m(Reader& in, const char* key);

/// Checks a list of 1 to 100 such places, in order along what passes them; may be left out.
void check_places_m(Reader& in, const char* key);

}  // namespace toft::codec
