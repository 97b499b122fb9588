#include "walk/later.h"

#include "walk/wording.h"

namespace toft::walk {

Ruling later(const Facts& f) {
    Ruling r;
    const bool told = f.building->future_load.known || f.building->spare_ways.known;
    r.known = told ? Known::stated : Known::unknown;
    const char* bond =
        "a pipe laid later asks for a bond of full size: a core for it costs little today and a "
        "trench then";
    r.supply(Bearing::neutral, bond);
    r.shared(Bearing::neutral, bond);
    r.own(Bearing::neutral,
          "a pipe, cable screen, fence or lead that comes later may join the two earths unseen");
    return r;
}

std::string later_found(const Facts& f) {
    return "load to come: " + fact_words(f.building->future_load, "A") +
           "; spare ways wished for: " + fact_words(f.building->spare_ways, "");
}

std::vector<std::string> later_changes(const Facts&, const Ruling&) {
    return {"water, gas, a tub, a caravan or a car to be charged that comes later"};
}

}  // namespace toft::walk
