#pragma once
// Reading a table between its rows. Rows are sorted by abscissa; outside the table the end row
// holds (callers bound their input so that this is on the safe side or impossible).

#include "base/ledger.h"

#include <cstddef>

namespace toft {

/// One row: abscissa and ordinate, with the row's citation.
struct TablePoint {
    double x = 0;
    Cited<double> y;
};

/// Names for the lines of an interpolation.
struct ReadingNames {
    Name below;   ///< ordinate of the row below
    Name above;   ///< ordinate of the row above
    Name result;  ///< the interpolated figure
};

/// The ordinate at `x` by straight line between neighbouring rows; on a row, that row's figure.
/// `points` must hold at least one row.
template <class L>
ValueIn<L, double> read_between(L& ledger, const ReadingNames& names, const TablePoint* points,
                                std::size_t count, double x) {
    if (x <= points[0].x) return ledger.table(names.result, points[0].y);
    std::size_t i = 1;
    while (i < count && points[i].x < x) ++i;
    if (i == count) return ledger.table(names.result, points[count - 1].y);
    if (points[i].x == x) return ledger.table(names.result, points[i].y);
    const double share = (x - points[i - 1].x) / (points[i].x - points[i - 1].x);
    const auto below = ledger.table(names.below, points[i - 1].y);
    const auto above = ledger.table(names.above, points[i].y);
    return ledger.let(names.result, below + (above - below) * share);
}

}  // namespace toft
