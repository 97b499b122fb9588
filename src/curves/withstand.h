#pragma once
// How long each conductor of a run bears a current: k2 S2 = I2 t, a straight line on log paper.

#include "curves/log_paper.h"
#include "study/scheme.h"

#include <string>
#include <vector>

namespace toft::curves {

/// One line of the picture: conductors that withstand the same.
struct Withstand {
    std::string names;         ///< "live core and protective core, 10 mm²"
    double energy = 0;         ///< k2 S2, A2 s
    std::vector<double> dash;  ///< empty for a full line
};

/// The conductors of the run that a fault may heat, the weakest stretch of each sort, the weakest
/// first; those within 1 % of each other share a line.
std::vector<Withstand> withstands(const tables::Catalogue& catalogue,
                                  const study::RunScheme& scheme);

/// The adiabatic law holds up to so long, seconds (434.5.2).
inline constexpr double adiabatic_seconds = 5;

/// The letter that stands for line `number` (from 0) where the paper is tight: "a", "b" …
std::string line_letter(std::size_t number);

/// Lines from 5 s down, each with its names along it; on tight paper with its letter.
drawing::Items withstand_lines(const LogPaper& paper, const std::vector<Withstand>& lines);

}  // namespace toft::curves
