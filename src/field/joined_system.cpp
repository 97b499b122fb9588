#include "field/joined_system.h"

#include <cmath>

namespace toft::field {

namespace {

constexpr double nearer = 0.8;
constexpr double nearest = 0.05;  ///< metres: from here the next step is to stay
constexpr double precise = 1e-3;  ///< metres

std::vector<Wire> moved(std::vector<Wire> wires, const Move& move, Metres by) {
    const double size = std::hypot(move.east, move.north);
    const Metres east = by * (move.east / size);
    const Metres north = by * (move.north / size);
    for (Wire& wire : wires) {
        if (wire.electrode == 0) continue;
        wire.from.east += east;
        wire.from.north += north;
        wire.to.east += east;
        wire.to.north += north;
    }
    return wires;
}

Faults faults_of(const std::vector<Wire>& wires, const Move& move, double wanted) {
    Faults faults;
    const auto refuse = [&](const char* code, const char* pointer, const char* says) {
        faults.push_back({code, pointer, says, "", {}});
    };
    bool one = false;
    bool more = false;
    for (const Wire& wire : wires) {
        one = one || wire.electrode == 1;
        more = more || wire.electrode > 1;
    }
    if (!one || more) refuse("wire", "", "two electrodes are needed, 0 and 1");
    const double size = std::hypot(move.east, move.north);
    if (!(size > 0) || !std::isfinite(size)) refuse("move", "", "the move needs a direction");
    if (!(move.farthest > metres(0)) || !std::isfinite(move.farthest.number())) {
        refuse("move", "/farthest", "the move needs a length above 0");
    }
    if (!(wanted > 0) || !(wanted < 1)) {
        refuse("wanted", "", "the wanted share lies between 0 and 1");
    }
    return faults;
}

}  // namespace

TwoEarths two_earths(const Field& field, int a, int b) {
    TwoEarths earths;
    earths.of_a = field.resistance(a, a);
    earths.of_b = field.resistance(b, b);
    earths.mutual = field.resistance(a, b);
    earths.onto_b = earths.mutual / earths.of_a;
    earths.onto_a = earths.mutual / earths.of_b;
    earths.joined = bridged(earths, ohms(0)).from_a;
    return earths;
}

Bridged bridged(const TwoEarths& earths, Ohms bridge) {
    const Ohms own = earths.of_a - earths.mutual;
    const Ohms round = own + earths.of_b - earths.mutual + bridge;
    Bridged result;
    result.through = own / round;
    result.from_a = earths.of_a - own * result.through;
    const Ohms rise_of_b = earths.mutual + (earths.of_b - earths.mutual) * result.through;
    result.onto_b = rise_of_b / result.from_a;
    return result;
}

Outcome<Separation> separate(const Medium& medium, const std::vector<Wire>& wires, const Move& move,
                             double wanted) {
    if (Faults faults = faults_of(wires, move, wanted); !faults.empty()) {
        return failed(std::move(faults));
    }
    const auto at = [&](Metres by) { return solve_field(medium, moved(wires, move, by)); };
    const auto farthest = at(move.farthest);
    if (!farthest) return failed(farthest.error());
    Separation result{false, {move.farthest, two_earths(*farthest)}};
    if (result.at.earths.onto_b > wanted) return result;
    result.reached = true;
    Metres inside{};
    /// Keeps the place when k is still as wanted there.
    const auto keep = [&](Metres by) {
        const auto field = at(by);
        if (!field || two_earths(*field).onto_b > wanted) return false;
        result.at = {by, two_earths(*field)};
        return true;
    };
    for (;;) {
        const Metres by = result.at.moved * nearer;
        const bool stay = by < metres(nearest);
        inside = stay ? metres(0) : by;
        if (!keep(inside)) break;
        if (stay) return result;
    }
    while (result.at.moved - inside > metres(precise)) {
        const Metres middle = (result.at.moved + inside) / 2;
        if (!keep(middle)) inside = middle;
    }
    return result;
}

}  // namespace toft::field
