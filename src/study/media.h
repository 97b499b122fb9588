#pragma once
// Soils made ready for fields: the images of layers take far longer to work out than the field of
// a rod among them, and every electrode that is asked about stands in the same few soils.

#include "field/medium.h"

#include <deque>
#include <utility>

namespace toft::study {

/// True when layer by layer resistivity and thickness are the same figures.
bool same_soil(const field::Strata& a, const field::Strata& b);

/// Each soil made ready once.
class Media {
public:
    /// Nothing for soil that no field can be solved in; else it lives as long as this does.
    const field::Medium* in(const field::Strata& soil);

    std::size_t count() const { return ready_.size(); }

private:
    std::deque<std::pair<field::Strata, field::Medium>> ready_;
};

}  // namespace toft::study
