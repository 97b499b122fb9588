#include "shock/touch_time.h"

#include "base/limit.h"

#include <limits>

namespace toft::shock {

namespace {

/// Between two neighbouring rows, straight on log paper.
template <class L>
ValueIn<L, double> on_log_paper(L& ledger, const TablePoint& a, const TablePoint& b,
                                const ValueIn<L, Volts>& touch) {
    const auto first = ledger.table({"t.below", "longest time at the voltage below", 0, "s"}, a.y);
    const auto second = ledger.table({"t.above", "longest time at the voltage above", 0, "s"}, b.y);
    const auto slope =
        ledger.let({"slope", "of the curve on log paper"}, ln(second / first) / ln(b.x / a.x));
    return ledger.let({"t.curve", "longest time on the curve", 0, "s"},
                      first * power(touch / volts(a.x), slope));
}

}  // namespace

const Cited<Volts>& no_time_below(const tables::Shock& tables, tables::TouchCurve curve) {
    return tables
        .limit(curve == tables::TouchCurve::dry ? tables::Threshold::dry : tables::Threshold::wet)
        .limit;
}

template <class L>
LongestTouch<L> longest_touch(L& ledger, const Name& name, const tables::Shock& tables,
                              tables::TouchCurve curve, const ValueIn<L, Volts>& touch) {
    const double u = plain(touch).number();
    if (within(u, no_time_below(tables, curve).value.number())) {
        ledger.table({"U.threshold", "voltage up to which the curve sets no time"},
                     no_time_below(tables, curve));
        return {TouchRange::unlimited,
                ledger.stated(name, seconds(std::numeric_limits<double>::infinity()),
                              "at or below the threshold")};
    }
    const auto& points = tables.touch_time[static_cast<std::size_t>(curve)];
    const auto row = [&](const TablePoint& point) {
        return ledger.table(name, Cited<Seconds>{seconds(point.y.value), point.y.citation});
    };
    if (u <= points.front().x) return {TouchRange::limited, row(points.front())};
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (u == points[i].x) return {TouchRange::limited, row(points[i])};
        if (u > points[i].x) continue;
        const auto time = on_log_paper<L>(ledger, points[i - 1], points[i], touch);
        return {TouchRange::limited, ledger.let(name, time * seconds(1))};
    }
    return {TouchRange::past_curve, row(points.back())};
}

TouchVerdict touch_verdict(const tables::Shock& tables, tables::TouchCurve curve, Volts touch,
                           Seconds lasts) {
    Silent ledger;
    const auto longest = longest_touch(ledger, {"t", ""}, tables, curve, touch);
    if (longest.range == TouchRange::unlimited) return TouchVerdict::no_limit;
    const bool inside =
        longest.range == TouchRange::limited && within(lasts.number(), longest.time.number());
    return inside ? TouchVerdict::inside : TouchVerdict::beyond;
}

template LongestTouch<Silent> longest_touch(Silent&, const Name&, const tables::Shock&,
                                            tables::TouchCurve, const Volts&);
template LongestTouch<Recording> longest_touch(Recording&, const Name&, const tables::Shock&,
                                               tables::TouchCurve, const Traced<Volts>&);

}  // namespace toft::shock
