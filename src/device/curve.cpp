#include "device/curve.h"

#include <limits>

namespace toft::device {

namespace {

using tables::CurvePoint;
using tables::Device;

constexpr double never = std::numeric_limits<double>::infinity();

/// The name of a figure on the way to `of`.
constexpr Name step_to(const char* symbol, const char* meaning, const Name& of) {
    return {symbol, meaning, of.part, "", "", *of.of ? of.of : of.symbol};
}

/// Number of the first point whose current exceeds `current`; points rise in current.
std::size_t first_above(const Device& device, Amperes current) {
    std::size_t i = 0;
    while (i < device.points.size() && device.points[i].current.value <= current) ++i;
    return i;
}

/// Interpolates time between points i-1 and i on logarithmic axes.
template <class L>
ValueIn<L, Seconds> between(L& ledger, const Name& name, const Device& device, std::size_t i,
                            const ValueIn<L, Amperes>& current) {
    const CurvePoint& a = device.points[i - 1];
    const CurvePoint& b = device.points[i];
    const auto ia =
        ledger.table(step_to("I.slow", "curve point below the current", name), a.current);
    const auto ib =
        ledger.table(step_to("I.fast", "curve point above the current", name), b.current);
    const auto ta =
        ledger.stated(step_to("t.slow", "time of the point below", name), a.time, "curve");
    const auto tb =
        ledger.stated(step_to("t.fast", "time of the point above", name), b.time, "curve");
    return ledger.let(name, ta * power(tb / ta, ln(current / ia) / ln(ib / ia)));
}

}  // namespace

template <class L>
ValueIn<L, Seconds> operating_time(L& ledger, const Name& name, const Device& device,
                                   const ValueIn<L, Amperes>& current) {
    const std::size_t i = first_above(device, plain(current));
    if (i == 0) return ledger.stated(name, seconds(never), "below the curve: need not operate");
    if (i == device.points.size()) {
        return ledger.stated(name, device.points.back().time,
                             "above the curve: at most its last time");
    }
    return between(ledger, name, device, i, current);
}

template <class L>
ValueIn<L, Amperes> operating_current(L& ledger, const Name& name, const Device& device,
                                      Seconds time) {
    const auto& points = device.points;
    if (time >= points.front().time) return ledger.table(name, points.front().current);
    std::size_t i = 1;
    while (i < points.size() && points[i].time > time) ++i;
    if (i == points.size()) {
        return ledger.stated(name, amperes(never), "the curve does not reach so short a time");
    }
    if (points[i].time == time) return ledger.table(name, points[i].current);
    const auto ia = ledger.table(step_to("I.slow", "curve point of the longer time", name),
                                 points[i - 1].current);
    const auto ib =
        ledger.table(step_to("I.fast", "curve point of the shorter time", name), points[i].current);
    const double share = ln(time / points[i - 1].time) / ln(points[i].time / points[i - 1].time);
    return ledger.let(name, ia * power(ib / ia, share));
}

namespace {

/// That of the lowest tabulated level which the current does not exceed.
const Cited<AmpereSquareSeconds>& class_limit(const Device& device, Amperes current) {
    for (const tables::LetThrough& level : device.let_through_at) {
        if (current <= level.up_to) return level.limit;
    }
    return *device.let_through;
}

}  // namespace

template <class L>
ValueIn<L, AmpereSquareSeconds> let_through(L& ledger, const Name& name, const Device& device,
                                            const ValueIn<L, Amperes>& current) {
    const std::size_t i = first_above(device, plain(current));
    if (i == 0) {
        return ledger.stated(name, ampere_square_seconds(never), "the device need not operate");
    }
    const Name time = step_to("t.op", "longest operating time at that current", name);
    if (i < device.points.size()) {
        const auto t = between(ledger, time, device, i, current);
        return ledger.let(name, squared(current) * t);
    }
    const CurvePoint& last = device.points.back();
    const auto t = ledger.stated(time, last.time, "last point of the curve");
    // The energy of a filled fuse falls along its curve, so that of the last point bounds all
    // larger currents. A breaker and a bare wire wait for the current to pass through zero: there
    // it counts itself.
    const auto bound =
        device.limiting() ? squared(ledger.table(step_to("I.last", "last point of the curve", name),
                                                 last.current)) *
                                t
                          : squared(current) * t;
    if (!device.let_through || plain(current) > device.breaking.value) {
        return ledger.let(name, bound);
    }
    const auto limit = ledger.table(step_to("I2t.class", "limit of the energy class", name),
                                    class_limit(device, plain(current)));
    return ledger.let(name, least(bound, limit));
}

template Seconds operating_time(Silent&, const Name&, const Device&, const Amperes&);
template Traced<Seconds> operating_time(Recording&, const Name&, const Device&,
                                        const Traced<Amperes>&);
template Amperes operating_current(Silent&, const Name&, const Device&, Seconds);
template Traced<Amperes> operating_current(Recording&, const Name&, const Device&, Seconds);
template AmpereSquareSeconds let_through(Silent&, const Name&, const Device&, const Amperes&);
template Traced<AmpereSquareSeconds> let_through(Recording&, const Name&, const Device&,
                                                 const Traced<Amperes>&);

}  // namespace toft::device
