#pragma once
// The figures of a survey that one run hangs on, and how each is set. Page:
// docs/methods/tolerance.md.

#include "study/setting.h"

#include <functional>
#include <string>
#include <vector>

namespace toft::tolerance {

/// One run of a (valid) job. Catalogue and job must outlive whoever holds it.
struct Place {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    study::RunAt at{0};
};

/// What a figure tells: those of one kind go by one row of the tables and one wish.
enum class Kind {
    length,
    ze,
    neutral_loop,
    fault_current,
    electrode,
    soil,
    temperature,
    load,
    other
};

/// Sets a figure of a job to a range, or to one value given twice.
using Set = std::function<void(site::Job&, double low, double high)>;

/// A figure of the survey that one run hangs on, in the unit of its key.
struct Figure {
    std::string pointer;
    std::string says;
    std::string unit;
    Kind kind = Kind::other;
    bool known = false;
    double low = 0, high = 0;
    site::Standing standing = site::Standing::measured;
    site::Spread spread = site::Spread::even;
    Set set;
};

/// All numeric figures of the run, its building and those fed through it, and, of a run from the
/// house, of the intake; known or not. Whole numbers, sections and devices do not vary.
std::vector<Figure> figures_of(const Place& place);

/// The run of another job of the same shape, open facts at their worse end.
study::Setting<Silent> prepared_in(const Place& place, const site::Job& job);

/// Sets all loads of the run's buildings that are one figure to so many times what they are.
Set loads_times(const Place& place);

}  // namespace toft::tolerance
