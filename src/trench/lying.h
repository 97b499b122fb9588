#pragma once
// What lies side by side in a trench: cables, ducts with cables in them, conductors beside cables,
// ducts for data.

#include "answer/answer.h"
#include "site/job.h"
#include "tables/catalogue.h"

#include <string>
#include <vector>

namespace toft::trench {

enum class Kind { cable, duct, core, data };

/// Sizes are outer diameters.
struct Lying {
    Kind kind = Kind::cable;
    std::string sign;  ///< of the leg it belongs to, "A2"
    std::string says;  ///< "3-core 10 mm² cable", "50 mm duct for data"
    Metres across;
    std::vector<Metres> inside = {};  ///< of a duct
    bool armoured = false;
    bool there = false;  ///< it lies there today

    friend bool operator==(const Lying&, const Lying&) = default;
};

/// Diameter of a single core of that section, or of the next that the tables know.
Metres core_across(const tables::Catalogue& tables, SquareMillimetres section);

/// What the leg, in the ground, adds to its trench: first what carries power, then data.
/// `cable` null where none is chosen: then nothing with power is known.
std::vector<Lying> lying_of(const tables::Catalogue& tables, const site::Run& run,
                            const site::Leg& leg, const answer::StretchAnswer* cable);

/// A cable that lies there and stays, with nothing new beside it: nobody digs for it.
bool stays(const answer::StretchAnswer& cable);

}  // namespace toft::trench
