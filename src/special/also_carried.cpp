// What is to go from house to outbuilding beside the supply: switching, alarms, data. The run is
// chosen without cores for it.

#include "special/parts.h"

#include <algorithm>

namespace toft::special {

namespace {

using site::AlsoCarried;

bool carries(const Case& c, AlsoCarried what) {
    const auto& all = c.run->also_carries;
    return std::find(all.begin(), all.end(), what) != all.end();
}

std::string over_the_run(AlsoCarried what) { return site::word(what) + " beside the run"; }

void mains(const Case& c, AlsoCarried what, const char* says, std::vector<Advice>& all) {
    if (!carries(c, what)) return;
    all.push_back({over_the_run(what),
                   "a circuit belongs to one board: all its conductors, the neutral too, in one "
                   "cable, and apart from every other circuit",
                   says, footing(c, "two-way"), true});
}

void low_voltage(const Case& c, AlsoCarried what, std::vector<Advice>& all) {
    if (!carries(c, what)) return;
    all.push_back({over_the_run(what),
                   "extra-low voltage and mains share a cable or a duct only where all of it is "
                   "insulated for the mains voltage, or a partition or earthed screen is between",
                   "the run is chosen without pairs for it: a second cable, in a duct of its own; "
                   "neither is in the price",
                   footing(c, "bands"), false});
}

void data(const Case& c, std::vector<Advice>& all) {
    if (!carries(c, AlsoCarried::data)) return;
    all.push_back({over_the_run(AlsoCarried::data),
                   "buildings whose earths may differ are linked without metal, or so that no "
                   "screen joins them",
                   "optical fibre without metal; else unscreened pairs in a duct of their own. "
                   "Neither is in the price",
                   footing(c, "apart-earths"), false});
}

/// Any second cable with metal round it joins the earths of its two ends.
void second_earth(const Case& c, std::vector<Advice>& all) {
    if (c.run->also_carries.empty()) return;
    all.push_back({"armour or screen of a second cable",
                   "metal that is earthed at both ends joins the two earths",
                   "where the building has an electrode of its own, earth armour or screen of the "
                   "second cable at the house only and insulate the far end, as with the run; "
                   "joined at both ends it takes the house's earth out there and carries what "
                   "flows between the two",
                   footing(c, "apart-earths"), false});
}

}  // namespace

void also_carried(const Case& c, std::vector<Advice>& all) {
    mains(c, AlsoCarried::two_way_lighting,
          "the run is chosen without cores for it: a second cable that holds line, both "
          "strappers, neutral and protective conductor, fed from and isolated at one board and "
          "behind one residual current device, with a notice at the other board that turning it "
          "off leaves that cable live; not in the price. Or switch by radio and lay none",
          all);
    mains(c, AlsoCarried::switching,
          "the run is chosen without cores for it: a second cable that holds all conductors of "
          "the switched line, isolated together with what it switches, with a notice at the "
          "other board that turning it off leaves that cable live; not in the price",
          all);
    low_voltage(c, AlsoCarried::alarm, all);
    low_voltage(c, AlsoCarried::telephone, all);
    data(c, all);
    second_earth(c, all);
}

}  // namespace toft::special
