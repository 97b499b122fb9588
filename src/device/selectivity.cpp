#include "device/selectivity.h"

#include "base/limit.h"
#include "device/curve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace toft::device {

namespace {

using tables::CurvePoint;
using tables::Device;

constexpr double no_end = std::numeric_limits<double>::infinity();

/// A curve that ends at a longer time says nothing of how quick a fault is cleared.
constexpr double quick_s = 0.2;

double energy_of(const CurvePoint& p) { return (squared(p.current.value) * p.time).number(); }

/// Heat between two points of one thermal mechanism, straight on logarithmic axes.
double heat_between(const CurvePoint& a, const CurvePoint& b, double amps) {
    const double ia = a.current.value.number();
    const double share = std::log(amps / ia) / std::log(b.current.value.number() / ia);
    return amps * amps * a.time.number() * std::pow(b.time / a.time, share);
}

/// Where its curve begins: faults rather than overloads.
double faults_from(const Device& device) {
    return device.points.empty() ? no_end : device.points.front().current.value.number();
}

/// Below the curve, from its conventional operating currents. Past the last of them a breaker's
/// thermal release needs no more heat than there; a fuse melts along one line to its curve.
double needed_in_overload(const Device& device, double amps) {
    const auto& trips = device.trips;
    if (trips.empty() || amps < trips.front().current.value.number()) return no_end;
    for (std::size_t i = 1; i < trips.size(); ++i) {
        if (amps < trips[i].current.value.number())
            return heat_between(trips[i - 1], trips[i], amps);
    }
    if (device.fuse()) return heat_between(trips.back(), device.points.front(), amps);
    return energy_of(trips.back());
}

double needed_at(const Device& device, double amps) {
    if (amps < faults_from(device)) return needed_in_overload(device, amps);
    Silent silent;
    const Seconds t = operating_time(silent, {"t", "longest time"}, device, amperes(amps));
    return amps * amps * t.number();
}

/// What passes whatever the time it takes; a class or a filled element may limit it.
double passed_at(const Device& device, double amps) {
    Silent silent;
    return let_through(silent, {"I2t", "energy let through"}, device, amperes(amps)).number();
}

/// The hold that bears most at that current; null where none speaks of it. What is held for a time
/// is held at a smaller current for as long as the energy stays the same: heat that leaks away
/// only helps.
const CurvePoint* best_hold(const Device& device, double amps) {
    const CurvePoint* best = nullptr;
    for (const CurvePoint& p : device.holds) {
        if (p.current.value.number() < amps) continue;
        if (!best || energy_of(*best) < energy_of(p)) best = &p;
    }
    return best;
}

double borne_at(const Device& device, double amps) {
    if (!device.holds.empty() && amps <= device.holds.front().current.value.number()) return no_end;
    const CurvePoint* hold = best_hold(device, amps);
    return hold ? energy_of(*hold) : 0;
}

double melting_at(const Device& device) {
    return device.melting ? device.melting->value.number() : 0;
}

constexpr double just_above = 1 + 1e-12;

/// Currents between which both energies are powers of the current.
class Corners {
public:
    Corners(const Device& up, const Device& down) {
        end_ = down.breaking.value.number();
        for (const CurvePoint& p : up.holds) add(p.current.value.number());
        for (const auto* list : {&down.trips, &down.points}) {
            for (const CurvePoint& p : *list) add(p.current.value.number());
        }
        if (down.let_through && !down.points.empty()) {
            const Seconds last = down.points.back().time;
            add(root(down.let_through->value / last).number());
            for (const tables::LetThrough& level : down.let_through_at) {
                add(root(level.limit.value / last).number());
                add(level.up_to.number());
            }
        }
        add(end_);
        std::sort(all_.begin(), all_.begin() + static_cast<std::ptrdiff_t>(count_));
    }
    const double* begin() const { return all_.data(); }
    const double* end() const { return all_.data() + count_; }

private:
    void add(double amps) {
        if (amps <= end_ && count_ < all_.size()) all_[count_++] = amps;
    }
    std::array<double, 32> all_{};
    std::size_t count_ = 0;
    double end_ = 0;
};

/// Where a pair is sure: from 0 to `first_end`, and in the highest range that begins at or below
/// the prospective current.
struct Sure {
    double first_end = 0;
    double from = 0;
    double to = 0;
    bool crossed = false;  ///< the energies meet at `to`, which is no corner of either

    void take(double begin, double end, bool crosses) {
        const bool first = from == 0 && begin <= to;
        if (begin > to) from = begin;
        to = end;
        crossed = crosses;
        if (first) first_end = to;
    }
};

/// A range of currents; empty where it does not begin before it ends.
struct Range {
    double from = 0;
    double to = 0;
    bool crossed = false;

    bool any() const { return from < to; }
};

/// Where between corners `a` and `b` an energy does not exceed what is borne.
Range range_within(double (*energy)(const Device&, double), const Device& down, const Range& ab,
                   double bears) {
    const double a = ab.from;
    const double b = ab.to;
    if (std::isinf(bears)) return {a, b, false};
    if (!(bears > 0)) return {};
    const double at_a = a > 0 ? energy(down, a * just_above) : no_end;  // a class steps up there
    if (std::isinf(at_a)) return {};
    const double middle = energy(down, std::sqrt(a * b));
    const double at_b = middle * middle / at_a;  // just before b: straight on logarithmic axes
    const bool begins = within(at_a, bears);
    const bool ends = within(at_b, bears);
    if (begins && ends) return {a, b, false};
    if (!begins && !ends) return {};
    const double x = a * std::pow(b / a, std::log(bears / at_a) / std::log(at_b / at_a));
    return begins ? Range{a, x, true} : Range{x, b, false};
}

/// What of the currents between two corners is sure: cleared in less time than is held, or with
/// less energy than melts.
void look_between(const Pair& pair, const Range& ab, Sure& sure) {
    Range one = range_within(needed_at, pair.downstream, ab, borne_at(pair.upstream, ab.to));
    Range other = range_within(passed_at, pair.downstream, ab, melting_at(pair.upstream));
    if (other.any() && (!one.any() || other.from < one.from)) std::swap(one, other);
    if (one.any()) sure.take(one.from, one.to, one.crossed);
    if (other.any() && other.to > one.to) sure.take(other.from, other.to, other.crossed);
}

Sure sure_of(const Pair& pair, double prospective) {
    Sure sure;
    double before = 0;
    for (const double corner : Corners(pair.upstream, pair.downstream)) {
        if (corner <= before) continue;
        if (before > prospective && sure.to < before) break;
        const Sure known = sure;
        look_between(pair, {before, corner}, sure);
        if (sure.from > prospective) return known;
        before = corner;
    }
    return sure;
}

/// The current at which the energies meet, with its working.
template <class L>
ValueIn<L, Amperes> meeting(L& ledger, const Pair& pair, double amps, const Name& name) {
    const int part = pair.part;
    if (amps < pair.downstream.points.back().current.value.number()) {
        return ledger.stated(name, amperes(amps), "where the two energies meet");
    }
    const auto t = ledger.stated({"t.down", "longest time of the downstream device", part},
                                 pair.downstream.points.back().time, "last point of its curve");
    const CurvePoint* hold = best_hold(pair.upstream, amps);
    const Device& up = pair.upstream;
    if (up.melting && (!hold || energy_of(*hold) < up.melting->value.number())) {
        const auto e = ledger.table({"I2t.up", "least energy that melts the upstream fuse", part},
                                    *up.melting);
        return ledger.let(name, root(e / t));
    }
    const auto i =
        ledger.table({"I.hold", "current the upstream device holds", part}, hold->current);
    const auto held = ledger.stated({"t.hold", "time it holds that", part}, hold->time, "test");
    return ledger.let(name, i * root(held / t));
}

template <class L>
ValueIn<L, Amperes> limit_of(L& ledger, const Pair& pair, const Sure& sure) {
    const Name name{"Is", "current up to which the pair is selective", pair.part, "", "536.4"};
    if (!(sure.to > 0)) return ledger.stated(name, amperes(0), "nowhere that matters");
    if (sure.crossed) return meeting(ledger, pair, sure.to, name);
    for (const CurvePoint& p : pair.upstream.holds) {
        if (p.current.value.number() != sure.to) continue;
        const CurvePoint& last = pair.downstream.points.back();
        const bool meets = p.time == last.time && last.current.value <= p.current.value;
        return meets ? meeting(ledger, pair, sure.to, name) : ledger.table(name, p.current);
    }
    if (sure.to == pair.downstream.breaking.value.number()) {
        return ledger.table(name, pair.downstream.breaking);
    }
    return ledger.stated(name, amperes(sure.to), "corner of the downstream device's curve");
}

constexpr const char* by_ratio =
    "gG fuses whose rated currents are far enough apart: selective by their standard, even where "
    "bands as wide as it allows lie over one another";
constexpr const char* all_the_way =
    "the downstream device is sure to have cleared before the upstream one can operate";
constexpr const char* fuse_may_melt =
    "at more current the upstream fuse may melt before the downstream device has cleared";
constexpr const char* breaker_may_trip = "at more current the upstream breaker may trip at once";
constexpr const char* out_of_reach =
    "more current than the downstream device can break may operate both";
constexpr const char* overloads =
    "faults are cleared by the downstream device; of some overloads the tables promise nothing";
constexpr const char* bands_meet =
    "the bands of the two lie over one another: either may operate first, or both";
constexpr const char* nothing_held =
    "the tables do not say how long the upstream device holds a fault";
constexpr const char* nothing_cleared =
    "the tables do not say how soon the downstream device clears a fault";

const char* why_no_further(const Pair& pair, const Sure& sure) {
    if (!within(pair.downstream.breaking.value.number(), sure.to)) {
        return pair.upstream.fuse() ? fuse_may_melt : breaker_may_trip;
    }
    return out_of_reach;
}

template <class L>
void judge(const Pair& pair, const Sure& sure, double prospective, Selectivity<L>& s) {
    const bool gap = sure.from > sure.first_end;
    if (within(prospective, sure.to)) {
        s.verdict = gap ? Selective::partly : Selective::selective;
        s.why = gap ? overloads : all_the_way;
    } else if (pair.upstream.holds.size() < 2) {
        s.verdict = Selective::not_known;
        s.why = nothing_held;
    } else if (sure.to > faults_from(pair.downstream)) {
        s.verdict = Selective::partly;
        s.why = why_no_further(pair, sure);
    } else if (pair.downstream.points.empty() ||
               pair.downstream.points.back().time.number() > quick_s) {
        s.verdict = Selective::not_known;
        s.why = nothing_cleared;
    } else {
        s.verdict = Selective::not_selective;
        s.why = bands_meet;
    }
    if (!gap || s.verdict != Selective::partly) return;
    s.gap_from = amperes(sure.first_end);
    s.gap_to = amperes(sure.from);
}

/// Whether both are gG fuses of a ratio that is known to be selective.
bool by_rated_currents(const Pair& pair) {
    const auto& up = pair.upstream.fuse_ratio;
    const auto& down = pair.downstream.fuse_ratio;
    return up && down &&
           within(std::max(up->value, down->value), pair.upstream.rating / pair.downstream.rating);
}

template <class L>
Selectivity<L> gg_over_gg(L& ledger, const Pair& pair, double prospective) {
    const int part = pair.part;
    const auto& up = *pair.upstream.fuse_ratio;
    const auto& down = *pair.downstream.fuse_ratio;
    const auto least_ratio = ledger.table(
        {"ratio.least", "least ratio of rated currents for gG fuses in series", part, "", "536.4"},
        down.value > up.value ? down : up);
    const auto ratio = ledger.stated({"In.up", "rated current of the upstream fuse", part},
                                     pair.upstream.rating, "device") /
                       ledger.stated({"In.down", "rated current of the downstream fuse", part},
                                     pair.downstream.rating, "device");
    const auto breaking = ledger.table(
        {"Icn.down", "breaking capacity of the downstream fuse", part}, pair.downstream.breaking);
    Selectivity<L> s;
    s.to = ledger.let({"Is", "current up to which the pair is selective", part, "", "536.4"},
                      breaking * least(ratio / least_ratio, 1.0));
    const bool whole = within(prospective, plain(s.to).number());
    s.verdict = whole ? Selective::selective : Selective::partly;
    s.why = whole ? by_ratio : out_of_reach;
    return s;
}

}  // namespace

const char* selective_word(Selective verdict) {
    switch (verdict) {
        case Selective::selective:
            return "selective";
        case Selective::partly:
            return "partly";
        case Selective::not_selective:
            return "not selective";
        case Selective::not_known:
            return "not known";
    }
    return "";
}

AmpereSquareSeconds needed(const Device& device, Amperes current) {
    return ampere_square_seconds(needed_at(device, current.number()));
}

AmpereSquareSeconds borne(const Device& device, Amperes current) {
    return ampere_square_seconds(borne_at(device, current.number()));
}

template <class L>
Selectivity<L> selectivity(L& ledger, const Pair& pair, const ValueIn<L, Amperes>& prospective) {
    const double most_amps = plain(prospective).number();
    if (by_rated_currents(pair)) return gg_over_gg(ledger, pair, most_amps);
    const Sure sure = sure_of(pair, most_amps);
    Selectivity<L> s;
    judge(pair, sure, most_amps, s);
    const bool some = s.verdict == Selective::selective || s.verdict == Selective::partly;
    s.to = limit_of(ledger, pair, some ? sure : Sure{});
    return s;
}

template Selectivity<Silent> selectivity(Silent&, const Pair&, const Amperes&);
template Selectivity<Recording> selectivity(Recording&, const Pair&, const Traced<Amperes>&);

}  // namespace toft::device
