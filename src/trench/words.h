#pragma once
// Legs and trenches in the words of whoever digs.

#include "trench/works.h"

#include <string>
#include <vector>

namespace toft::trench {

/// "0.6 m", three digits.
std::string metre_words(Metres length);

/// "21 m", "46 to 52 m", "not known".
std::string length_words(const site::Fact<Metres>& length);

/// "in the ground under lawn, 0.6 m over the cable", "overhead over lawn, 5.5 m high".
std::string leg_words(const Works& works, const LegWork& leg);

/// What holds a leg that is not in the ground: "clips or cleats on the wall".
std::string fixed_words(const site::Leg& leg);

/// "the house" for the origin, else the building's name or its id.
std::string place_words(const site::Job& job, const std::string& id);

/// "A: the house to Potter's studio".
std::string run_words(const Works& works, std::size_t run);

/// Metal that is stated to come out of the ground or from the house: what to expect in the way.
struct Service {
    std::string building;  ///< its name
    std::string says;      ///< "water pipe (copper), out of the ground"
};
std::vector<Service> services_of(const Works& works);

/// "0.35 m³", "1.2 m³": two digits, as soil is measured.
std::string volume_words(CubicMetres volume);
/// "12.5 m", rounded to half a metre upwards.
std::string metres_to_buy(Metres length);

}  // namespace toft::trench
