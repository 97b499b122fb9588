#include "search/span.h"

#include "earthing/main_bonding.h"

#include <algorithm>

namespace toft::search {

namespace {

using study::Setting;

bool same_factors(const cable::LegFactors<Silent>& a, const cable::LegFactors<Silent>& b) {
    return a.total == b.total;
}

bool same_legs(const Setting<Silent>& a, const Setting<Silent>& b) {
    for (std::size_t i = 0; i < a.legs.size(); ++i) {
        if (a.legs[i].length != b.legs[i].length) return false;
    }
    return true;
}

bool same_surroundings(const Setting<Silent>& a, const Setting<Silent>& b) {
    for (std::size_t i = 0; i < a.legs.size(); ++i) {
        const auto& x = a.legs[i];
        const auto& y = b.legs[i];
        if (x.surroundings != y.surroundings) return false;
        for (std::size_t f = 0; f < tables::families; ++f) {
            if (!same_factors(x.factors[f], y.factors[f]) ||
                !same_factors(x.paired[f], y.paired[f])) {
                return false;
            }
        }
    }
    return true;
}

/// The loops that drive fault currents, the voltage, and what the legs lose. Behind an electrode of
/// the building's own no circuit is chosen by its earth fault loop: a residual current device
/// clears.
bool same_feed(const Setting<Silent>& a, const Setting<Silent>& b) {
    const auto& x = a.supply;
    const auto& y = b.supply;
    const bool loops = x.ze_most == y.ze_most && x.ze_least == y.ze_least &&
                       x.zn_most == y.zn_most && x.zn_least == y.zn_least &&
                       x.zl_most == y.zl_most && x.zl_least == y.zl_least && x.pscc == y.pscc;
    const bool electrodes = x.ra_most == y.ra_most && x.ra_least == y.ra_least;
    return loops && electrodes && same_surroundings(a, b);
}

long parts_to_bond(const Setting<Silent>& s) {
    return std::count_if(s.building.parts.begin(), s.building.parts.end(),
                         [](const study::MetalPart& part) { return part.extraneous; });
}

double tax(const price::Book& book) { return 1 + book.amount(price::Item::vat_percent) / 100; }

/// With tax, which is not rounded: spans of route and head add up.
double total_of(const price::Book& book, Pounds laid, Pounds far_end, Pounds first) {
    return (laid + far_end + first).number() * tax(book);
}

/// Of two totals the tax is rounded, each by half a penny at the most.
constexpr double rounding = 0.01 + 1e-6;

/// Lines of a price that move with the length of a stretch (cable, separate conductor and its
/// labour) and of a leg (trench or fixings, bed, duct, labour).
constexpr std::size_t lines_of_stretch = 3;
constexpr std::size_t lines_of_leg = 4;

}  // namespace

bool priced_alike(const Setting<Silent>& a, const Setting<Silent>& b,
                  study::BuildingEarthing earthing) {
    return same_legs(a, b) && parts_to_bond(a) == parts_to_bond(b) &&
           study::local_bond(a, earthing) == study::local_bond(b, earthing) &&
           (a.circuits.judged.empty() || same_feed(a, b));
}

bool Span::surely_above(const Span& other) const {
    return far_low > other.far_high + rounding && near_low > other.near_high + rounding;
}

Span operator+(const Span& a, const Span& b) {
    return {a.far_low + b.far_low, a.far_high + b.far_high, a.near_low + b.near_low,
            a.near_high + b.near_high};
}

double out_of_step(const price::Book& book, const Setting<Silent>& setting) {
    const std::size_t lines =
        lines_of_stretch * setting.stretches.size() + lines_of_leg * setting.legs.size();
    // Half a penny a line where it is looked at, and as much where the lengths end.
    return 0.01 * static_cast<double>(lines) * tax(book);
}

Span widened(const Span& span, double by) {
    return {span.far_low - by, span.far_high + by, span.near_low - by, span.near_high + by};
}

Span route_span(const price::Book& book, const price::Price<Silent>& worse,
                const price::Price<Silent>& better) {
    const Pounds long_way = worse.run + worse.ground + worse.test_and_paper;
    const Pounds short_way = better.run + better.ground + better.test_and_paper;
    const Pounds nothing{};
    return {total_of(book, long_way, better.far_end, nothing),
            total_of(book, long_way, worse.far_end, worse.remedies),
            total_of(book, short_way, better.far_end, nothing),
            total_of(book, short_way, worse.far_end, worse.remedies)};
}

Span head_span(const price::Book& book, const price::Price<Silent>& worse) {
    const double low = total_of(book, worse.house_end, Pounds{}, Pounds{});
    const double high = total_of(book, worse.house_end, Pounds{}, worse.remedies);
    return {low, high, low, high};
}

}  // namespace toft::search
