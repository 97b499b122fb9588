#include "codec/job_places.h"

#include <cmath>

namespace toft::codec {

namespace {

constexpr double farthest = 2000;
constexpr std::size_t most_places = 100;

bool is_coordinate(const Json& n) {
    return n.is_number() && std::fabs(n.get<double>()) <= farthest;
}

bool is_place(const Json& node) {
    return node.is_array() && node.size() == 2 && is_coordinate(node.at(0)) &&
           is_coordinate(node.at(1));
}

}  // namespace

std::optional<Place> read_place_m(Reader& in, const char* key) {
    const Json* at = in.takes(key);
    if (!at) return std::nullopt;
    if (is_place(*at)) return Place{at->at(0).get<double>(), at->at(1).get<double>()};
    in.fault("wrong-kind", key,
             fmt::format("{} must be two numbers of -2000 to 2000, metres east and north of the "
                         "house",
                         key));
    return std::nullopt;
}

void check_places_m(Reader& in, const char* key) {
    const Json* places = in.takes(key);
    if (!places) return;
    if (!places->is_array()) {
        in.fault("wrong-kind", key,
                 fmt::format("{} must be a list of places, each two numbers: metres east and north "
                             "of the house",
                             key));
        return;
    }
    if (places->empty() || places->size() > most_places) {
        in.fault("too-many", key,
                 fmt::format("{} holds {} places; 1 to {} are read: leave it out, or keep the "
                             "corners only",
                             key, places->size(), most_places));
        return;
    }
    for (std::size_t i = 0; i < places->size(); ++i) {
        if (is_place(places->at(i))) continue;
        in.entry(key, i).fault(
            "wrong-kind", "",
            "a place is two numbers of -2000 to 2000, metres east and north of the house");
    }
}

}  // namespace toft::codec
