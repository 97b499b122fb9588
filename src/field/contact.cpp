#include "field/contact.h"

#include "field/piece.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::field {

namespace {

/// The square of the distance between two straight lines with ends.
double square_between(const Wire& a, const Wire& b) {
    const Vector p = vector_of(a.from);
    const Vector q = vector_of(b.from);
    const Vector u = vector_of(a.to) - p;
    const Vector v = vector_of(b.to) - q;
    const Vector w = p - q;
    const double uu = dot(u, u);
    const double vv = dot(v, v);
    const double uv = dot(u, v);
    const auto share = [](double part, double whole) {
        return whole > 0 ? std::clamp(part / whole, 0.0, 1.0) : 0.0;
    };
    const auto square = [&](double s, double t) {
        const Vector d = w + s * u - t * v;
        return dot(d, d);
    };
    double best = square(share(-dot(w, u), uu), 0);
    best = std::min(best, square(share(dot(v - w, u), uu), 1));
    best = std::min(best, square(0, share(dot(w, v), vv)));
    best = std::min(best, square(1, share(dot(w + u, v), vv)));
    const double across = uu * vv - uv * uv;
    if (across <= 1e-12 * uu * vv) return best;
    const double s = (uv * dot(w, v) - vv * dot(w, u)) / across;
    const double t = (uu * dot(w, v) - uv * dot(w, u)) / across;
    if (s < 0 || s > 1 || t < 0 || t > 1) return best;
    return std::min(best, square(s, t));
}

}  // namespace

Faults contacts(const std::vector<Wire>& wires) {
    std::set<std::pair<int, int>> pairs;
    for (std::size_t i = 0; i < wires.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            const auto pair = std::minmax(wires[i].electrode, wires[j].electrode);
            if (pair.first == pair.second) continue;
            const double reach = (wires[i].radius + wires[j].radius).number();
            if (square_between(wires[i], wires[j]) < reach * reach) pairs.insert(pair);
        }
    }
    Faults faults;
    for (const auto& [one, other] : pairs) {
        faults.push_back(
            {"wire",
             "",
             fmt::format("electrodes {} and {} touch: move one, or make them one", one, other),
             "",
             {}});
    }
    return faults;
}

}  // namespace toft::field
