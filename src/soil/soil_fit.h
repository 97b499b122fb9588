#pragma once
// Soil from four-pin readings: how many layers they show, which, how surely, and what other soils
// they allow as well.
//
// Least squares of ln(taken/seen) over 1, 2 and 3 layers from several starts. A layer more is
// believed where Fisher's F rejects doing without it at a risk of 1 %, the noise never taken below
// `reading_error`; or where without it readings are missed by more than a tenth and with it by less
// than half of that. Ranges are of 95 % for one figure at a time, all others moved to their best
// (profile of the likelihood): where readings fix only a product or quotient, or nothing, they are
// wide or open. They know nothing of slanting layers, metal in the ground and the season.
// Page: docs/methods/soil-fit.md.

#include "base/outcome.h"
#include "field/soil.h"
#include "soil/spacing_reading.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::soil {

enum class Verdict { uniform, two_layers, three_layers, not_identifiable };

/// "uniform", "two layers", "three layers", "not identifiable".
const char* words_of(Verdict verdict);

/// What readings allow of one figure. Open: they set no end on that side; the figure then is where
/// the search ended.
template <class Q>
struct Range {
    Q low{};
    Q high{};
    bool open_low = false;
    bool open_high = false;
};

struct FitOptions {
    /// Share by which meter and pins err at least, one standard deviation; common practice.
    double reading_error = 0.02;
};

/// A reading whose leaving out changes the misfit by more than chance does (1 % for all together).
struct OddReading {
    std::size_t reading = 0;    ///< its place among those given, from 0
    double misfit_without = 0;  ///< of the others alone
};

struct SoilFit {
    Verdict verdict = Verdict::not_identifiable;
    field::Strata best;
    std::vector<Range<OhmMetres>> resistivities;  ///< from the surface down, the deepest last
    std::vector<Range<Metres>> thicknesses;
    double misfit = 0;              ///< root of the mean square of ln(taken/seen)
    std::vector<double> residuals;  ///< taken/seen - 1, in the order given
    std::optional<OddReading> odd;
    /// Soils that the readings allow about as well, most at the edge of what they allow; the best
    /// first. At most 16. What is computed over all of them brackets what the readings leave open.
    std::vector<field::Strata> plausible;
    /// Soil ten times better or worse that begins deeper than this would not have shown. 0 where
    /// nothing is known.
    Metres reach{};
    std::string says;  ///< a sentence or three for a person
};

/// The fit, or what faults_of() finds; also refuses no readings and more than 200 (`out-of-range`).
/// With fewer than three different spacings, three readings that no uniform soil explains, or a fit
/// of which no resistivity has an end, the verdict is
/// `not identifiable`: the best is their mean as uniform soil, and the range from a third of the
/// lowest to three times the highest is a guess of ours, not a confidence.
Outcome<SoilFit> fit_soil(const std::vector<SpacingReading>& readings,
                          const FitOptions& options = {});

}  // namespace toft::soil
