#pragma once
// The resistance of an electrode from a three-pole test: current from the electrode to a far spike,
// voltage to a second spike in between, at one or several distances.
//
// In uniform soil the meter shows  R(x) = R - c (f(x) + f(D) - 1/(D - x)),  c = rho/(2 pi),
// with f(x) = 1/x for a half ball and asinh(L/x)/L for a rod of length L: exact where leakage is
// even. R and c are fitted to all readings; for one half ball R(x) = R at x = 0.618 D, whatever c
// is (MIL-HDBK-419A, vol. 1, 2.7). Layered soil moves that place; the error given allows for half
// of what the fitted curve changes between 0.518 D and 0.718 D. Page:
// docs/methods/fall-of-potential.md.

#include "base/outcome.h"
#include "base/units.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::soil {

struct PotentialReading {
    Metres distance{};  ///< of the inner spike from the middle of the electrode
    Ohms resistance{};
};

struct FallTest {
    Metres current_spike{};                  ///< from the middle of the electrode
    std::vector<PotentialReading> readings;  ///< outwards
    Metres length{};                         ///< of the rod under test; 0 where it is no rod
    Metres diameter{};                       ///< of the rod; 0 where it is no rod
    double reading_error = 0.02;             ///< share, one standard deviation; common practice
};

enum class Plateau {
    flat,       ///< the curve changes by at most a tenth about its middle
    sloping,    ///< by at most a fifth: the figure stands, its error is wide
    none,       ///< by more: the current spike is too near
    irregular,  ///< the readings do not follow the curve, or fall outwards
    unproven    ///< too few readings to tell
};

/// "flat", "sloping", "none", "irregular", "unproven".
const char* words_of(Plateau plateau);

struct FallResult {
    Plateau plateau = Plateau::unproven;
    Ohms resistance{};
    Ohms low{};  ///< with `high`: about 95 %, the error above included
    Ohms high{};
    std::optional<Ohms> at_618;  ///< between readings on either side, or one right there
    double change = 0;    ///< of the curve from 0.518 to 0.718 D over `resistance`; 0 if not known
    double misfit = 0;    ///< root of the mean square of shares by which readings miss the curve
    Metres far_enough{};  ///< for the current spike, for a flat curve; 0 if not known
    std::string says;
};

/// `out-of-range` for lengths and resistances that are not above 0, inner spikes not nearer than
/// the current spike, a rod without diameter, no readings or more than 200; `out-of-order` for
/// readings that do not go outwards.
Outcome<FallResult> electrode_resistance(const FallTest& test);

/// What the meter shows in uniform soil over the true resistance, less 1: the error of the model
/// where there is but one reading. A rod of this length and diameter.
double overlap_error(const FallTest& test, Metres distance);

}  // namespace toft::soil
