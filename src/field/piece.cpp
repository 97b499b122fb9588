#include "field/piece.h"

#include "base/pi.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

/// How much closer pieces lie at the ends of a part, where leakage changes fastest: at the very end
/// their length is 1 - crowding of the mean.
constexpr double crowding = 0.6;
constexpr double stoutest = 4;             ///< radii that a wire is long, at least
constexpr double shortest = 4;             ///< radii that a piece is long, where possible
constexpr double no_length = 1e-9;         ///< of a wire: ends so near a boundary lie on it
constexpr std::size_t most_pieces = 4000;  ///< pieces: a matrix of 128 MB

double length_of(const Wire& wire) {
    const Vector d = vector_of(wire.to) - vector_of(wire.from);
    return std::sqrt(dot(d, d));
}

/// What is wrong with the wire; empty when nothing is.
std::string complaint(const Wire& wire) {
    const double length = length_of(wire);
    const double radius = wire.radius.number();
    if (!std::isfinite(length) || !std::isfinite(radius)) return "has a place that is no number";
    if (wire.from.depth < metres(0) || wire.to.depth < metres(0)) return "rises above the ground";
    if (!(radius > 0)) return "has no thickness";
    if (!(length >= stoutest * radius)) return "is shorter than four radii: no thin wire";
    if (wire.electrode < 0) return "has a negative number of its electrode";
    return "";
}

Faults faults_of(const std::vector<Wire>& wires) {
    Faults faults;
    int last = -1;
    for (std::size_t i = 0; i < wires.size(); ++i) {
        const std::string says = complaint(wires[i]);
        last = std::max(last, wires[i].electrode);
        if (says.empty()) continue;
        faults.push_back({"wire", fmt::format("/{}", i), "the wire " + says, "", {}});
    }
    if (wires.empty()) faults.push_back({"wire", "", "there is no wire", "", {}});
    if (last >= static_cast<int>(wires.size())) {
        faults.push_back({"wire", "", "electrodes are not numbered from 0 without gaps", "", {}});
        return faults;
    }
    for (int electrode = 0; electrode <= last; ++electrode) {
        const bool has = std::any_of(wires.begin(), wires.end(),
                                     [&](const Wire& wire) { return wire.electrode == electrode; });
        if (has) continue;
        faults.push_back({"wire", "", fmt::format("electrode {} has no wire", electrode), "", {}});
    }
    return faults;
}

/// Cuts the part of a wire between two shares of its length into pieces.
void cut_part(const Wire& wire, double from, double to, double step, std::vector<Piece>& pieces) {
    const Vector start = vector_of(wire.from);
    const Vector whole = vector_of(wire.to) - start;
    const double length = std::sqrt(dot(whole, whole));
    const int count = std::max(1, static_cast<int>(std::ceil((to - from) * length / step - 1e-9)));
    const auto place = [&](int i) {
        const double even = static_cast<double>(i) / count;
        return from + (to - from) * (even - crowding / (2 * pi) * std::sin(2 * pi * even));
    };
    for (int i = 0; i < count; ++i) {
        Piece piece;
        const double share = place(i + 1) - place(i);
        piece.bar.middle = start + (place(i) + share / 2) * whole;
        piece.bar.along = (1 / length) * whole;
        piece.bar.half = share * length / 2;
        piece.bar.radius = wire.radius.number();
        piece.electrode = wire.electrode;
        pieces.push_back(piece);
    }
}

/// The shares of the wire's length where it begins, crosses a boundary, and ends.
std::vector<double> parts_of(const Wire& wire, const std::vector<double>& depths) {
    const double from = wire.from.depth.number();
    const double to = wire.to.depth.number();
    std::vector<double> shares{0, 1};
    for (double depth : depths) {
        if (from == to) break;
        const double share = (depth - from) / (to - from);
        if (share > no_length && share < 1 - no_length) shares.push_back(share);
    }
    std::sort(shares.begin(), shares.end());
    return shares;
}

}  // namespace

Vector vector_of(const Spot& spot) {
    return {spot.east.number(), spot.north.number(), spot.depth.number()};
}

Outcome<std::vector<Piece>> cut(const std::vector<Wire>& wires, const LayeredSoil& soil,
                                const Cutting& cutting) {
    return cut(wires, strata(soil), cutting);
}

Outcome<std::vector<Piece>> cut(const std::vector<Wire>& wires, const Strata& soil,
                                const Cutting& cutting) {
    Faults faults = faults_of(wires);
    if (!(cutting.longest > metres(0)) || cutting.fewest < 1) {
        faults.push_back({"cutting", "", "pieces need a length and a number above 0", "", {}});
    }
    if (!faults.empty()) return failed(std::move(faults));
    const std::vector<double> depths = boundaries(soil);
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < wires.size(); ++i) {
        const Wire& wire = wires[i];
        const double length = length_of(wire);
        const double step = std::max(std::min(cutting.longest.number(), length / cutting.fewest),
                                     shortest * wire.radius.number());
        if (static_cast<double>(pieces.size()) + length / step > static_cast<double>(most_pieces)) {
            return failed({"cutting",
                           fmt::format("/{}", i),
                           fmt::format("there would be more than {} pieces", most_pieces),
                           "",
                           {}});
        }
        const std::size_t first = pieces.size();
        const std::vector<double> parts = parts_of(wire, depths);
        for (std::size_t p = 1; p < parts.size(); ++p) {
            cut_part(wire, parts[p - 1], parts[p], step, pieces);
        }
        for (std::size_t p = first; p < pieces.size(); ++p) pieces[p].wire = static_cast<int>(i);
    }
    return pieces;
}

}  // namespace toft::field
