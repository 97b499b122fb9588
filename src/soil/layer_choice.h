#pragma once
// The best soil of each number of layers, and how many layers the readings ask for.

#include "soil/least_squares.h"

#include <vector>

namespace toft::soil {

constexpr int most_layers = 3;

/// Readings in the order of their spacings.
struct Curve {
    Taken taken;
    std::vector<double> ln_spacing;
    double floor = 0;  ///< least standard deviation of ln of a reading
};

/// Readings that count, and those left free by a soil of so many layers.
int counted(const Curve& curve);
int free_readings(const Curve& curve, int layers);

/// What is searched for soils of so many layers: resistivities to 50 times beyond the readings,
/// less where layers would then be more than 10 000 times apart; thicknesses from a tenth of
/// the closest spacing to five times the widest.
Box search_box(const Curve& curve, int layers);

/// The best of several starts.
Settled best_of(const Curve& curve, int layers);

/// The best soils of 1, 2, … layers, as far as each leaves at least one reading free.
std::vector<Settled> best_of_each(const Curve& curve);

/// How many layers are believed: an index into `best` plus 1.
int layers_asked_for(const Curve& curve, const std::vector<Settled>& best);

/// The sum of squares up to which a soil of so many layers is still allowed.
double allowed_sum(const Curve& curve, int layers, double best_sum);

/// What a soil with more figures gains.
struct Gain {
    double drop = 0;  ///< of the sum of squares
    int figures = 1;  ///< more: 1 or an even number
    double rest = 0;  ///< sum of squares that remains
    int free = 0;     ///< readings that remain free; 0 leaves the noise at its floor
};

/// True when that gain is more than chance at this risk.
bool pays(const Curve& curve, const Gain& gain, double risk);

}  // namespace toft::soil
