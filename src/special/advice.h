#pragma once
// Things a building may hold that the standard has special rules for: what the rule asks, how this
// job stands to it, whose word it is, and whether a person must decide. Nothing here judges a
// scheme; how the building is earthed is the walk's business. Page: docs/methods/advice.md.

#include "guard/view.h"

#include <string>
#include <vector>

namespace toft::special {

struct Advice {
    std::string about;  ///< "surge", "vehicle charging, route 2"
    std::string asks;   ///< what the rule asks
    std::string says;   ///< how this job stands to it
    const tables::Footing* footing = nullptr;
    bool needs_a_person = false;
};

/// What is looked at besides the building.
struct Case {
    guard::View view;
    const site::Run* run = nullptr;
    Metres run_least{};  ///< length of the run
    Metres run_most{};
};

Case case_of(const study::Setting<Silent>& setting);

/// All that comes up for the building, in a fixed order; nothing where nothing does.
std::vector<Advice> advice_of(const Case& c);

}  // namespace toft::special
