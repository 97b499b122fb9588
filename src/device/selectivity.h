#pragma once
// Which of two devices in series clears a fault: up to which current the one nearer to the fault is
// sure to have cleared before the one upstream can operate. Both are compared by the energy I2t:
// what the downstream one needs at most against what the upstream one is sure to bear. 536.4; IEC
// 60269-1 Tables 2, 3 and 7; BS EN 60898-1 Table 7. Page: docs/methods/selectivity.md.

#include "base/ledger.h"
#include "tables/device.h"

namespace toft::device {

/// Not known: the tables promise nothing of one of the two. Partly: up to a current below the
/// prospective one, or but for some overloads.
enum class Selective : unsigned char { selective, partly, not_selective, not_known };

const char* selective_word(Selective verdict);

template <class L>
struct Selectivity {
    Selective verdict = Selective::not_known;
    /// At every current up to this one the downstream device is sure to be the only one to operate,
    /// but for those of the gap; 0 unless selective or partly so.
    ValueIn<L, Amperes> to{};
    Amperes gap_from;  ///< between these two currents nothing is promised; equal where there is
    Amperes gap_to;    ///< no gap
    const char* why = "";

    bool gap() const { return gap_from < gap_to; }
};

/// Two devices in series.
struct Pair {
    const tables::Device& upstream;
    const tables::Device& downstream;
    int part = 0;  ///< numbers the lines of working
};

/// Judged for faults up to `prospective`, the largest current at the downstream device.
template <class L>
Selectivity<L> selectivity(L& ledger, const Pair& pair, const ValueIn<L, Amperes>& prospective);

/// Heat of a current that flows until a device is sure to have operated, A2s: the current squared
/// times device::operating_time, and below its curve what its conventional currents promise;
/// infinite where it need not operate.
AmpereSquareSeconds needed(const tables::Device& device, Amperes current);

/// Heat of that current or a smaller one that a device is sure to bear without operating, A2s;
/// infinite up to the current it holds for as long as its longest test, 0 where nothing is
/// promised.
AmpereSquareSeconds borne(const tables::Device& device, Amperes current);

}  // namespace toft::device
