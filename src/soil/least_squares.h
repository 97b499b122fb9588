#pragma once
// Soils whose readings come nearest to those taken: the sum of squares of ln(seen/taken), by
// Levenberg's and Marquardt's steps over ln of resistivities and thicknesses, within a box.

#include "soil/layered_sounding.h"

#include <functional>
#include <vector>

namespace toft::soil {

/// What is seen over a soil.
using Look = std::function<Sight(const LogSoil&)>;

struct Taken {
    Look look;
    std::vector<double> ln;      ///< of each reading
    std::vector<double> weight;  ///< of each reading: 1, or 0 for one that is left out
};

/// Ends of what is searched, figure by figure. A figure whose ends are equal stays as it is.
struct Box {
    LogSoil low;
    LogSoil high;
};

struct Settled {
    LogSoil soil;
    double sum = 0;             ///< of squares
    std::vector<double> apart;  ///< ln(taken/seen), reading by reading
};

/// The least sum of squares downhill from `start`, which is moved into the box first.
Settled settle(const Taken& taken, const Box& box, const LogSoil& start, int most_steps = 80);

}  // namespace toft::soil
