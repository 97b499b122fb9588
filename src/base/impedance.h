#pragma once
// Complex impedance, at either depth of the ledger: a resistance and a reactance at 50 Hz that
// travel together. Series is a sum; parallel and magnitude write their working.

#include "base/ledger.h"

namespace toft {

template <class L>
struct ImpedanceIn {
    ValueIn<L, Ohms> r{};
    ValueIn<L, Ohms> x{};

    friend ImpedanceIn operator+(const ImpedanceIn& a, const ImpedanceIn& b) {
        return {a.r + b.r, a.x + b.x};
    }
};

using Impedance = ImpedanceIn<Silent>;

/// |Z| in ohms.
template <class L>
auto magnitude(const ImpedanceIn<L>& z) {
    return root(squared(z.r) + squared(z.x));
}

/// Names for the lines that a parallel combination writes.
struct ParallelNames {
    Name square;      ///< |Z1 + Z2|2
    Name resistance;  ///< real part of Z1 Z2 / (Z1 + Z2)
    Name reactance;   ///< imaginary part
};

/// Z1 Z2 / (Z1 + Z2). Neither may be zero.
template <class L>
ImpedanceIn<L> parallel(L& ledger, const ParallelNames& names, const ImpedanceIn<L>& a,
                        const ImpedanceIn<L>& b) {
    const auto square = ledger.let(names.square, squared(a.r + b.r) + squared(a.x + b.x));
    const auto a2 = squared(a.r) + squared(a.x);
    const auto b2 = squared(b.r) + squared(b.x);
    return {ledger.let(names.resistance, (a.r * b2 + b.r * a2) / square),
            ledger.let(names.reactance, (a.x * b2 + b.x * a2) / square)};
}

}  // namespace toft
